package org.evenfall.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Text that comes from outside: in UTF-8, and of a length that the program takes. */
public final class InputText {

    /** Most bytes of a file or a line of a stream. Assumption: a hundred times what a setup of many tests takes. */
    public static final int MOST_BYTES = 4_000_000;

    /** Most letters of one text in a setup. Assumption: ten pages of remarks; a card with more could not be read. */
    public static final int MOST_LETTERS = 20_000;

    private static final String BYTE_ORDER_MARK = "\ufeff";

    private InputText() {}

    /**
     * The whole text of a file; no more than the limit is ever held.
     *
     * @param name what to call the file in a message
     * @throws InputFileException when it is not there, cannot be read, is too long or is no text
     */
    public static String read(Path file, String name) throws InputFileException {
        if (Files.isDirectory(file)) {
            throw new InputFileException(name, "", "cannot be read: it is a folder");
        }
        try {
            return decode(WholeFileReader.read(file, MOST_BYTES), name);
        } catch (NoSuchFileException missing) {
            throw new InputFileException(name, "", "no such file");
        } catch (AccessDeniedException closed) {
            throw new InputFileException(name, "", "cannot be read: no permission");
        } catch (IOException unreadable) {
            throw new InputFileException(name, "", "cannot be read");
        }
    }

    /**
     * The text of bytes.
     *
     * @param bytes all, or more than the limit
     * @param name what to call it in a message
     * @throws InputFileException when there are too many, or they are not UTF-8
     */
    public static String decode(byte[] bytes, String name) throws InputFileException {
        if (bytes.length > MOST_BYTES) {
            throw new InputFileException(name, "", "longer than " + MOST_BYTES / 1_000_000 + " MB");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException binary) {
            throw new InputFileException(name, "", "not a text file in UTF-8");
        }
    }

    /** The text without a byte order mark in front. */
    static String withoutMark(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }
}
