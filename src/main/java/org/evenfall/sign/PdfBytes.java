package org.evenfall.sign;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** What the bytes of a PDF file show without reading its structure (ISO 32000-1, 7.2.2 and 7.5). */
final class PdfBytes {

    private static final byte[] BEGIN = "%PDF-".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] END = "%%EOF".getBytes(StandardCharsets.US_ASCII);

    private static final byte[] OBJECT = " obj".getBytes(StandardCharsets.US_ASCII);

    /** Assumption: a card has some hundred; far more only keep the reader busy. */
    private static final int MOST_OBJECTS = 100_000;

    /** Common practice: readers look for the begin of the file in as many bytes. */
    private static final int BEGIN_WITHIN_BYTES = 1024;

    private PdfBytes() {}

    /** Whether the file begins as a PDF file does. */
    static boolean begins(byte[] file) {
        for (int at = 0; at < BEGIN_WITHIN_BYTES && at + BEGIN.length <= file.length; at++) {
            if (has(file, at, BEGIN)) {
                return true;
            }
        }
        return false;
    }

    /** Whether nothing but blanks follows its last end mark; a file that was cut short ends with something else. */
    static boolean ends(byte[] file) {
        int last = file.length;
        while (last > 0 && isBlank(file[last - 1])) {
            last--;
        }
        return last >= END.length && has(file, last - END.length, END);
    }

    /** Whether it has more objects than any card. */
    static boolean hasTooManyObjects(byte[] file) {
        int objects = 0;
        for (int at = 0; at + OBJECT.length <= file.length; at++) {
            if (file[at] == OBJECT[0] && has(file, at, OBJECT)) {
                objects++;
            }
        }
        return objects > MOST_OBJECTS;
    }

    private static boolean has(byte[] file, int at, byte[] word) {
        return Arrays.equals(file, at, at + word.length, word, 0, word.length);
    }

    /** The next place without a blank. */
    static int afterBlanks(byte[] file, int from) {
        int at = from;
        while (at < file.length && isBlank(file[at])) {
            at++;
        }
        return at;
    }

    private static boolean isBlank(byte value) {
        return value == 0 || value == '\t' || value == '\n' || value == '\f' || value == '\r' || value == ' ';
    }
}
