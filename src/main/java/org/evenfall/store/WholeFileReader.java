package org.evenfall.store;

import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads files whole or not at all. */
final class WholeFileReader {

    private WholeFileReader() {}

    /**
     * All bytes of a file.
     *
     * @throws java.nio.file.NoSuchFileException when there is none
     * @throws IOException when it cannot be read, or reading ends before the file does
     */
    static byte[] read(Path file) throws IOException {
        return read(file, Integer.MAX_VALUE - 1);
    }

    /**
     * All bytes of a file, or one more than a limit of a longer one.
     *
     * @param most the limit
     * @throws java.nio.file.NoSuchFileException when there is none
     * @throws IOException when it cannot be read, or reading ends before the file does
     */
    static byte[] read(Path file, int most) throws IOException {
        try (SeekableByteChannel channel = Files.newByteChannel(file)) {
            long size = Math.min(channel.size(), most);
            byte[] bytes = Channels.newInputStream(channel).readNBytes(most + 1);
            if (bytes.length < size) {
                throw new IOException("only " + bytes.length + " of " + size + " bytes could be read");
            }
            return bytes;
        }
    }
}
