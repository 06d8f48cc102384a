package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import org.evenfall.publish.CardService;
import org.evenfall.sign.KeyRing;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file with the passphrase: what of it is the passphrase, and when it is refused. */
class PassphraseFileTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    private Commands.Answer card(String file) {
        return new Commands(folder).run("card", DEMO, "--out", "card.pdf", "--passphrase-file", file);
    }

    private KeyRing key() throws Exception {
        KeyRing ring = CardService.keys(new UserFolder(folder.resolve("home")));
        ring.signing("A. Marlow", "", Instant.parse("2027-03-18T09:00:00Z"));
        return ring;
    }

    private void write(String text) throws Exception {
        Files.write(folder.resolve("secret.txt"), text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void blanksArePartOfIt() throws Exception {
        key().protect(" old  gate ".toCharArray());
        for (String same : new String[] {" old  gate ", " old  gate \n", " old  gate \r\n", "\uFEFF old  gate \n"}) {
            write(same);
            assertThat(card("secret.txt").code()).as(same).isZero();
        }
        for (String other : new String[] {"old  gate", " old  gate \n\n", "\n old  gate ", "", "\uFEFF"}) {
            write(other);
            Commands.Answer answer = card("secret.txt");
            assertThat(answer.code()).isEqualTo(CommandFace.WRONG);
            assertThat(answer.err()).contains("not the passphrase").contains("(--passphrase-file)");
        }
    }

    /** A file that was named is read also when the key needs none: the person expects that it counts. */
    @Test
    void aMissingFileIsRefusedWithAnOpenKeyToo() throws Exception {
        key();
        assertThat(card("none.txt").err()).isEqualToNormalizingNewlines("none.txt: no such file\n");
        assertThat(card("none.txt").code()).isEqualTo(CommandFace.WRONG);
        assertThat(card("home").err()).isEqualToNormalizingNewlines("home: cannot be read\n");
        Files.write(folder.resolve("latin.txt"), new byte[] {'g', (byte) 0xE9});
        assertThat(card("latin.txt").err()).isEqualToNormalizingNewlines("latin.txt: is no text in UTF-8\n");
        write("x".repeat(10_001));
        assertThat(card("secret.txt").err()).isEqualToNormalizingNewlines("secret.txt: is too long for a passphrase\n");
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        write("anything");
        assertThat(card("secret.txt").code()).isZero();
    }

    /** The option helps with a passphrase only. */
    @Test
    void otherTroubleWithTheKeyHasNoHint() throws Exception {
        key();
        Files.writeString(folder.resolve("home").resolve("signing-key.p12"), "broken");
        Commands.Answer answer = new Commands(folder).run("card", DEMO, "--out", "card.pdf");
        assertThat(answer.code()).isEqualTo(CommandFace.WRONG);
        assertThat(answer.err()).contains("damaged").doesNotContain("--passphrase-file");
    }

    @Test
    void aKeyThatOthersCouldReadIsReported() throws Exception {
        key();
        Path file = folder.resolve("home").resolve("signing-key.p12");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        Commands.Answer answer = new Commands(folder).run("card", DEMO, "--out", "card.pdf");
        assertThat(answer.code()).isZero();
        assertThat(answer.err())
                .contains("Others on this computer could read your key file")
                .hasLineCount(1);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(new Commands(folder).run("card", DEMO, "--out", "card.pdf").err())
                .isEmpty();
    }
}
