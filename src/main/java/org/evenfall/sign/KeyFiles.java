package org.evenfall.sign;

import java.io.IOException;
import java.nio.file.Path;

/** Writes files with secrets. Given from outside, since this room does not know how files are stored. */
@FunctionalInterface
public interface KeyFiles {

    /**
     * Writes the file whole or not at all, readable by its owner only; replaces an older one and makes the folder.
     *
     * @throws IOException when the file cannot be written; an older one is then unchanged
     */
    void write(Path file, byte[] bytes) throws IOException;
}
