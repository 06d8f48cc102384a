package org.evenfall.quantity;

/** Text of unknown origin made fit for one line of a terminal. */
public final class PlainText {

    private static final int UNREADABLE = 0xfffd;

    private PlainText() {}

    /**
     * The text on one line: line breaks become blanks, other control characters U+FFFD; what is longer is cut and ends in
     * "…".
     *
     * @param most most letters of the result, at least 1
     */
    public static String oneLine(String text, int most) {
        StringBuilder line = new StringBuilder();
        int letters = 0;
        int next;
        for (int i = 0; i < text.length(); i = next) {
            int letter = text.codePointAt(i);
            next = i + Character.charCount(letter);
            if (letter == '\r' && next < text.length() && text.charAt(next) == '\n') {
                next++;
            }
            if (++letters == most && next < text.length()) {
                return line.append('…').toString();
            }
            line.appendCodePoint(plain(letter));
        }
        return line.toString();
    }

    private static int plain(int letter) {
        return switch (letter) {
            case '\n', '\r', '\t', 0x85, 0x2028, 0x2029 -> ' ';
            default ->
                Character.isISOControl(letter) || Character.getType(letter) == Character.SURROGATE
                        ? UNREADABLE
                        : letter;
        };
    }
}
