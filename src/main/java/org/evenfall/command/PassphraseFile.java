package org.evenfall.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.util.Arrays;

/** A text file with a passphrase: all of its text but a byte order mark and one last line break. */
final class PassphraseFile {

    /** Assumption: no passphrase is longer; a file that is, was named by mistake. */
    private static final int MOST_BYTES = 10_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private PassphraseFile() {}

    /**
     * The passphrase, to be overwritten by the caller after use.
     *
     * @param typed the file as typed
     * @throws CommandException when there is no such file, or it is no text file that can be read
     */
    static char[] read(CommandContext context, String typed) throws CommandException {
        byte[] bytes = {};
        CharBuffer text = CharBuffer.allocate(0);
        try (InputStream in = Files.newInputStream(context.path(typed))) {
            bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new CommandException(
                        typed + ": is too long for a passphrase",
                        new IOException("more than " + MOST_BYTES + " bytes"));
            }
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return Arrays.copyOfRange(text.array(), begin(text), end(text));
        } catch (NoSuchFileException missing) {
            throw new CommandException(typed + ": no such file", missing);
        } catch (CharacterCodingException otherText) {
            throw new CommandException(typed + ": is no text in UTF-8", otherText);
        } catch (IOException unreadable) {
            throw new CommandException(typed + ": cannot be read", unreadable);
        } finally {
            Arrays.fill(bytes, (byte) 0);
            Arrays.fill(text.array(), '\0');
        }
    }

    private static int begin(CharBuffer text) {
        return text.hasRemaining() && text.get(0) == BYTE_ORDER_MARK ? 1 : 0;
    }

    private static int end(CharBuffer text) {
        int end = text.limit();
        if (end > begin(text) && text.get(end - 1) == '\n') {
            end--;
        }
        if (end > begin(text) && text.get(end - 1) == '\r') {
            end--;
        }
        return end;
    }
}
