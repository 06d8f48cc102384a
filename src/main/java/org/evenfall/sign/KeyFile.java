package org.evenfall.sign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The file with the person's signing key. A key that is replaced is kept under another name, never deleted. */
final class KeyFile {

    private static final String NAME = "signing-key";
    private static final String ENDING = ".p12";

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmssSSS", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path file;
    private final KeyFiles files;

    KeyFile(Path folder, KeyFiles files) {
        this.file = folder.resolve(NAME + ENDING);
        this.files = files;
    }

    boolean exists() {
        return Files.exists(file);
    }

    /** The key; {@link KeyException.Kind#WRONG_PASSPHRASE} when another passphrase closes it. */
    SigningKey load(char[] passphrase) throws KeyException {
        return SigningKeys.load(file, passphrase);
    }

    /** Takes the file from others who may read it; whether there were any. */
    boolean putRight() {
        return OwnerOnly.putRight(file);
    }

    /** Writes the present key again, closed by another passphrase. */
    void rewrite(SigningKey key, char[] passphrase) throws IOException {
        files.write(file, SigningKeys.store(key, passphrase));
    }

    /**
     * Writes a key in place of the present one, of which a copy is kept first: at no time there is none. Without success the
     * present one is still there.
     */
    void replace(SigningKey key, char[] passphrase, Instant now) throws IOException {
        byte[] bytes = SigningKeys.store(key, passphrase);
        keepFormer(NAME + "-until-" + STAMP.format(now));
        files.write(file, bytes);
    }

    private void keepFormer(String name) throws IOException {
        byte[] former;
        try {
            former = KeyBytes.read(file);
        } catch (NoSuchFileException none) {
            return;
        }
        Path copy = file.resolveSibling(name + ENDING);
        for (int i = 2; Files.exists(copy); i++) {
            copy = file.resolveSibling(name + "-" + i + ENDING);
        }
        files.write(copy, former);
    }
}
