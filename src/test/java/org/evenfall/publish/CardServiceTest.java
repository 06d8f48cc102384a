package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.evenfall.card.CardSamples;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.VerifyResult;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardServiceTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    @TempDir
    private Path temp;

    private UserFolder user;
    private CardService cards;
    private Setup setup;
    private Assessment assessment;

    @BeforeEach
    void demo() throws Exception {
        user = new UserFolder(temp.resolve("home"));
        cards = new CardService(user, WORDS, Clock.fixed(CardSamples.WHEN, ZoneOffset.UTC));
        setup = CardSamples.demo();
        assessment = Assessor.assess(setup);
    }

    @Test
    void aCardIsWrittenAndVerified() throws Exception {
        Path file = cards.freeFile(setup, false);
        assertThat(user.root().relativize(file).toString())
                .startsWith("cards/thornmarsh-farm-")
                .endsWith(".pdf");
        String code = cards.write(setup, assessment, file);
        assertThat(cards.keys().status().code()).isEqualTo(code);
        assertThat(cards.verify(file))
                .isEqualTo(new VerifyResult(
                        true, true, false, "A. Marlow", "A. Marlow", code, true, "2027-03-18T10:00:00Z"));
        assertThat(cards.signed(setup, assessment)).isEqualTo(Files.readAllBytes(file));
        String name = file.getFileName().toString();
        assertThat(cards.freeFile(setup, false).getFileName().toString()).isEqualTo(name.replace(".pdf", "-2.pdf"));
    }

    @Test
    void theKeyFilesAreTheirOwnersOnly() throws Exception {
        cards.signed(setup, assessment);
        assertThat(permissions(user.root())).isEqualTo("rwx------");
        try (Stream<Path> files = Files.list(user.root())) {
            assertThat(files.toList())
                    .extracting(file -> file.getFileName() + " " + permissions(file))
                    .containsExactlyInAnyOrder(
                            "signing-key.p12 rw-------", "known-keys.txt rw-------", "signing-key.lock rw-------");
        }
    }

    private static String permissions(Path file) {
        try {
            return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
        } catch (java.io.IOException unreadable) {
            return "unreadable";
        }
    }

    /** The preview makes no key and has the pages of the card that is then signed. */
    @Test
    void thePreviewMakesNoKey() throws Exception {
        assertThat(cards.preview(setup, assessment, 20)).hasSize(2);
        assertThat(user.root()).doesNotExist();
    }

    @Test
    void anUnwritableCardIsReported() throws Exception {
        Path blocked = Files.writeString(temp.resolve("blocked"), "a file, not a folder");
        assertThatThrownBy(() -> cards.write(setup, assessment, blocked.resolve("card.pdf")))
                .isInstanceOf(CardFileException.class)
                .hasMessage(blocked.resolve("card.pdf") + ": cannot be written; nothing was changed");
        assertThat(blocked).hasContent("a file, not a folder");
    }

    @Test
    void aClosedKeyIsReported() throws Exception {
        cards.signed(setup, assessment);
        cards.keys().protect("gate".toCharArray());
        CardService later = new CardService(user, WORDS, Clock.systemUTC());
        assertThatThrownBy(() -> later.write(setup, assessment, temp.resolve("card.pdf")))
                .isInstanceOfSatisfying(
                        KeyException.class, e -> assertThat(e.kind()).isEqualTo(KeyException.Kind.LOCKED));
        assertThat(temp.resolve("card.pdf")).doesNotExist();
    }

    @Test
    void whatIsNoCardIsReported() throws Exception {
        Path none = temp.resolve("none.pdf");
        assertThatThrownBy(() -> cards.verify(none))
                .isInstanceOf(CardFileException.class)
                .hasMessage(none + ": no such file");
        assertThatThrownBy(() -> cards.verify(temp))
                .isInstanceOf(CardFileException.class)
                .hasMessage(temp + ": cannot be read");
        Path text = Files.writeString(temp.resolve("text.pdf"), "no card");
        assertThatThrownBy(() -> cards.verify(text))
                .isInstanceOf(CardFileException.class)
                .hasMessage(text + ": is no PDF file, or is damaged");
    }

    /** Refused by its length before it is read; a device without a length is read no further than a card can be. */
    @Test
    void aFileTooLargeForACardIsNotRead() throws Exception {
        Path large = temp.resolve("large.pdf");
        try (FileChannel channel = FileChannel.open(large, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.allocate(1), 3_000_000_000L);
        }
        assertThatThrownBy(() -> cards.verify(large))
                .isInstanceOf(CardFileException.class)
                .hasMessage(large + ": is too large for a card");
        Path endless = Path.of("/dev/zero");
        assertThatThrownBy(() -> cards.verify(endless)).hasMessage("/dev/zero: is too large for a card");
    }

    /** A name in a certificate is anybody's text: it neither steers a terminal nor makes lines of its own. */
    @Test
    void controlCharactersOfANameAreNotShown() {
        VerifyResult hostile = new VerifyResult(
                true, true, false, "A", "Eve\u001B[2J\nUnchanged\u202E", "0123", false, "\u001B2027\nx");
        assertThat(VerifyText.of(hostile, WORDS))
                .contains("By a key not known here: Eve\uFFFD[2J Unchanged\uFFFD, 0123."
                        + " Compare the code with the one on the printed card.")
                .allMatch(line -> line.chars().noneMatch(Character::isISOControl));
    }

    @Test
    void aVerificationHasItsSentences() {
        VerifyResult unsigned = new VerifyResult(false, false, false, "", "", "", false, "");
        VerifyResult unknown =
                new VerifyResult(true, true, false, "A", "B. Other", "0123", false, "2027-03-18T10:00:00Z");
        VerifyResult known = new VerifyResult(true, true, false, "A", "B. Other", "0123", true, "2027-03-18T10:00:00Z");
        VerifyResult appended = new VerifyResult(true, false, true, "", "", "", false, "");
        VerifyResult changed = new VerifyResult(true, false, false, "", "", "", false, "");
        assertThat(VerifyText.of(unsigned, WORDS)).isEqualTo(List.of("Not signed."));
        assertThat(VerifyText.of(changed, WORDS))
                .isEqualTo(List.of("Changed after it was signed. Do not use this card."));
        assertThat(VerifyText.of(appended, WORDS))
                .isEqualTo(List.of("Something was added after it was signed. Do not use this card."));
        assertThat(VerifyText.of(unknown, WORDS))
                .hasSize(4)
                .startsWith(
                        "Unchanged since it was signed.",
                        "By a key not known here: B. Other, 0123. Compare the code with the one on the printed card.");
        assertThat(VerifyText.of(known, WORDS))
                .contains(
                        "By a key known here: B. Other, 0123.",
                        "Signed 18\u00a0March\u00a02027, 10:00 UTC (signer’s own clock).");
    }
}
