package org.evenfall.sign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads files with keys whole or not at all: a part of one, written back, would lose keys. */
final class KeyBytes {

    private KeyBytes() {}

    /**
     * All bytes of a file.
     *
     * @throws java.nio.file.NoSuchFileException when there is none
     * @throws IOException when it cannot be read, or only in part
     */
    static byte[] read(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        if (bytes.length < Files.size(file)) {
            throw new IOException("the file could be read in part only");
        }
        return bytes;
    }
}
