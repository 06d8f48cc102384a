package org.evenfall.sign;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A signed range in the bytes of a PDF file: everything from the begin to an end, but for one hexadecimal string with the
 * signature. Found in the bytes themselves, so that no later change of the file's structure hides it.
 *
 * @param gapStart place of the string's opening bracket
 * @param gapEnd first place behind its closing bracket
 * @param end first place behind the signed bytes
 */
record SignatureRange(int gapStart, int gapEnd, int end) {

    /** All ranges of a file that are sound, the one that ends first at the front. Takes time linear in the file. */
    static List<SignatureRange> allIn(byte[] file) {
        List<RangeText> mentions = RangeText.allIn(file);
        mentions.sort(Comparator.comparingLong(RangeText::gapStart));
        List<SignatureRange> sound = new ArrayList<>();
        long scanned = -1;
        int digitsEnd = -1;
        for (RangeText mention : mentions) {
            if (!mention.fits(file)) {
                continue;
            }
            // strings at different places have no byte in common, so each byte is looked at once
            if (mention.gapStart() != scanned) {
                scanned = mention.gapStart();
                digitsEnd = digitsEnd(file, (int) scanned + 1);
            }
            if (digitsEnd == mention.gapEnd() - 1) {
                sound.add(new SignatureRange((int) mention.gapStart(), (int) mention.gapEnd(), (int) mention.end()));
            }
        }
        sound.sort(Comparator.comparingInt(SignatureRange::end));
        return sound;
    }

    private static int digitsEnd(byte[] file, int from) {
        int at = from;
        while (at < file.length && Character.digit(file[at], 16) >= 0) {
            at++;
        }
        return at;
    }

    /** The signed bytes. */
    byte[] signedBytes(byte[] file) {
        byte[] signed = Arrays.copyOf(file, gapStart + end - gapEnd);
        System.arraycopy(file, gapEnd, signed, gapStart, end - gapEnd);
        return signed;
    }

    /** The hexadecimal digits of the signature. */
    String digits(byte[] file) {
        return new String(file, gapStart + 1, gapEnd - gapStart - 2, StandardCharsets.US_ASCII);
    }

    /** Whether these are the four numbers of this range. */
    boolean matches(int[] numbers) {
        return Arrays.equals(numbers, new int[] {0, gapStart, gapEnd, end - gapEnd});
    }
}
