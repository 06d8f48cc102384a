package org.evenfall.sign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The file with the person's signing key. A key that is replaced is renamed, never deleted. */
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

    /** Writes a key in place of the present one, which is renamed; without success everything is as before. */
    void replace(SigningKey key, char[] passphrase, Instant now) throws IOException {
        byte[] bytes = SigningKeys.store(key, passphrase);
        Path former = file.resolveSibling(NAME + "-until-" + STAMP.format(now) + ENDING);
        boolean replaced = exists();
        if (replaced) {
            Files.move(file, former);
        }
        try {
            files.write(file, bytes);
        } catch (IOException notWritten) {
            if (replaced) {
                Files.move(former, file);
            }
            throw notWritten;
        }
    }
}
