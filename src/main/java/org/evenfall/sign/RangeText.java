package org.evenfall.sign;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The text {@code /ByteRange [start length start length]} in the bytes of a file: a signature says with it which bytes it
 * covers.
 *
 * @param place where the text begins
 * @param numbers its four numbers
 */
record RangeText(int place, List<Long> numbers) {

    private static final byte[] NAME = "/ByteRange".getBytes(StandardCharsets.US_ASCII);

    /** More digits than a place in a file can have. */
    private static final int MOST_DIGITS = 10;

    /** Every such text, in the order of the file. */
    static List<RangeText> allIn(byte[] file) {
        List<RangeText> all = new ArrayList<>();
        for (int at = 0; at + NAME.length < file.length; at++) {
            if (file[at] == '/' && Arrays.equals(file, at, at + NAME.length, NAME, 0, NAME.length)) {
                List<Long> numbers = numbers(file, at + NAME.length);
                if (numbers.size() == 4) {
                    all.add(new RangeText(at, numbers));
                }
            }
        }
        return all;
    }

    /** The numbers in brackets from a place on; empty when something else is there. */
    private static List<Long> numbers(byte[] file, int from) {
        int at = PdfBytes.afterBlanks(file, from);
        if (at == file.length || file[at] != '[') {
            return List.of();
        }
        List<Long> numbers = new ArrayList<>();
        at = PdfBytes.afterBlanks(file, at + 1);
        while (at < file.length && numbers.size() <= 4) {
            if (file[at] == ']') {
                return numbers;
            }
            long number = 0;
            int digits = at;
            while (at < file.length && at - digits < MOST_DIGITS && file[at] >= '0' && file[at] <= '9') {
                number = 10 * number + (file[at++] - '0');
            }
            if (at == digits) {
                return List.of();
            }
            numbers.add(number);
            at = PdfBytes.afterBlanks(file, at);
        }
        return List.of();
    }

    long gapStart() {
        return numbers.get(1);
    }

    long gapEnd() {
        return numbers.get(2);
    }

    long end() {
        return numbers.get(2) + numbers.get(3);
    }

    /** Whether the range begins with the file, ends in it, holds this text, and leaves out one string in brackets. */
    boolean fits(byte[] file) {
        return numbers.get(0) == 0
                && gapStart() > 0
                && gapEnd() > gapStart() + 2
                && end() > gapEnd()
                && end() <= file.length
                && place < end()
                && file[(int) gapStart()] == '<'
                && file[(int) gapEnd() - 1] == '>';
    }
}
