package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The exit codes of {@code verify} for what the README says of each. */
class VerifyCodesTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();
    private static final int MOST_BYTES = 20_000_000;

    @TempDir
    private Path folder;

    private byte[] card;

    @BeforeEach
    void sign() throws Exception {
        assertThat(new Commands(folder).run("card", DEMO, "--out", "card.pdf").code())
                .isZero();
        card = Files.readAllBytes(folder.resolve("card.pdf"));
    }

    private int verify(byte[] bytes) throws Exception {
        Files.write(folder.resolve("other.pdf"), bytes);
        return new Commands(folder).run("verify", "other.pdf").code();
    }

    private int signature() {
        return new String(card, StandardCharsets.ISO_8859_1).lastIndexOf("/ByteRange");
    }

    /** Anywhere in the file, in the signature and in the object around it; 5 only where the range itself is written. */
    @Test
    void aChangedByteIsOneOrTwo() throws Exception {
        Random random = new Random(2027);
        int signature = signature();
        for (int i = 0; i < 600; i++) {
            int at = i % 2 == 0 ? random.nextInt(card.length) : signature - 200 + random.nextInt(600);
            byte[] changed = card.clone();
            changed[at] ^= (byte) (i % 4 == 0 ? 0x20 : 1 + random.nextInt(255));
            boolean range = at > signature && at < signature + 40;
            assertThat(verify(changed))
                    .as("byte " + at + " now " + changed[at])
                    .isIn(range ? List.of(1, 2, 5) : List.of(1, 2));
        }
    }

    @Test
    void cutShortIsTwoAndCutBehindItsPagesFour() throws Exception {
        for (int length = 0; length < card.length - 1; length += 997) {
            assertThat(verify(Arrays.copyOf(card, length)))
                    .as("cut at " + length)
                    .isEqualTo(2);
        }
        String text = new String(card, StandardCharsets.ISO_8859_1);
        int pages = text.indexOf("%%EOF") + "%%EOF\n".length();
        assertThat(pages).isLessThan(signature());
        assertThat(verify(Arrays.copyOf(card, pages))).isEqualTo(4);
    }

    @Test
    void anUpdateThatDropsTheSignatureIsFive() throws Exception {
        try (PDDocument document = Loader.loadPDF(card)) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.ACRO_FORM);
            document.getDocumentCatalog().getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream update = new ByteArrayOutputStream();
            document.saveIncremental(update);
            assertThat(verify(update.toByteArray())).isEqualTo(5);
        }
    }

    /** Somebody else, on another computer, signs a card of the same setup under the same name. */
    @Test
    void aCardOfAnotherUnderTheSameNameIsThree() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Commands other = new Commands(elsewhere);
        assertThat(other.run("card", DEMO, "--out", "card.pdf").code()).isZero();
        Path forged = elsewhere.resolve("card.pdf");
        Commands.Answer answer = new Commands(folder).run("verify", forged.toString(), "--json");
        assertThat(answer.code()).isEqualTo(3);
        assertThat(answer.json().get("signedBy").textValue()).isEqualTo("A. Marlow");
        assertThat(answer.json().get("keyCode"))
                .isNotEqualTo(new Commands(folder)
                        .run("verify", "card.pdf", "--json")
                        .json()
                        .get("keyCode"));
    }

    @Test
    void noCardIsTwo() throws Exception {
        assertThat(verify("no card".getBytes(StandardCharsets.US_ASCII))).isEqualTo(2);
        assertThat(new Commands(folder).run("verify", "none.pdf").code()).isEqualTo(2);
    }

    /** A card with zeros behind it: up to 20 MB it is read and something was added, above it is not read. */
    @Test
    void aboveTwentyMegabytesIsTwo() throws Exception {
        Path large = Files.write(folder.resolve("large.pdf"), card);
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(MOST_BYTES);
        }
        assertThat(new Commands(folder).run("verify", "large.pdf").code()).isEqualTo(5);
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(MOST_BYTES + 1L);
        }
        Commands.Answer beyond = new Commands(folder).run("verify", "large.pdf");
        assertThat(beyond.code()).isEqualTo(2);
        assertThat(beyond.err()).contains("too large for a card");
    }
}
