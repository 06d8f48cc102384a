package org.evenfall.command;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;

/**
 * Writes no control character to a terminal but tabs and line ends: U+FFFD takes its place. Where the writer behind it
 * cannot write, a flush says so.
 */
final class PlainWriter extends FilterWriter {

    private static final char UNREADABLE = '\ufffd';
    private static final String ALLOWED = "\t\n" + System.lineSeparator();

    private final PrintWriter target;

    PlainWriter(PrintWriter target) {
        super(target);
        this.target = target;
    }

    private static char plain(int letter) {
        return Character.isISOControl(letter) && ALLOWED.indexOf(letter) < 0 ? UNREADABLE : (char) letter;
    }

    @Override
    public void write(int letter) {
        target.write(plain(letter));
    }

    @Override
    public void write(char[] letters, int from, int count) {
        for (int i = from; i < from + count; i++) {
            write(letters[i]);
        }
    }

    @Override
    public void write(String text, int from, int count) {
        write(text.substring(from, from + count).toCharArray(), 0, count);
    }

    @Override
    public void flush() throws IOException {
        if (target.checkError()) {
            throw new IOException("cannot be written");
        }
    }
}
