package org.evenfall.quantity;

/** Text from outside, made safe for one line of a terminal or window. */
public final class PlainText {

    private static final char MARK = '\uFFFD';
    private static final String CUT = "…";

    private PlainText() {}

    /**
     * The text as one line. Line breaks and tabs become blanks (CR LF one of them); other control characters, those that
     * turn the direction of writing, and half characters become U+FFFD. A longer text is cut and ends in "…".
     *
     * @param text any text
     * @param most characters of the answer at most, the mark of a cut among them
     */
    public static String oneLine(String text, int most) {
        StringBuilder line = new StringBuilder(Math.min(text.length(), most));
        int at = 0;
        while (at < text.length() && line.length() <= most) {
            int point = text.codePointAt(at);
            at += Character.charCount(point);
            if (point == '\r' && at < text.length() && text.charAt(at) == '\n') {
                at++;
            }
            line.appendCodePoint(isBreak(point) ? ' ' : isUnsafe(point) ? MARK : point);
        }
        return line.length() <= most ? line.toString() : cut(line, most);
    }

    private static String cut(StringBuilder line, int most) {
        int end = Math.max(0, most - CUT.length());
        if (end > 0 && Character.isHighSurrogate(line.charAt(end - 1))) {
            end--;
        }
        return most < CUT.length() ? "" : line.substring(0, end) + CUT;
    }

    private static boolean isBreak(int point) {
        return (point >= '\t' && point <= '\r') || point == 0x85 || point == 0x2028 || point == 0x2029;
    }

    /** Controls, marks and overrides of the writing direction, and surrogates without their other half. */
    private static boolean isUnsafe(int point) {
        return Character.isISOControl(point)
                || point == 0x061C
                || point == 0x200E
                || point == 0x200F
                || (point >= 0x202A && point <= 0x202E)
                || (point >= 0x2066 && point <= 0x2069)
                || (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE);
    }
}
