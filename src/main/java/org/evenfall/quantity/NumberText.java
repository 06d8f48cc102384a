package org.evenfall.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number with decimal comma or dot, and with groups of three separated by a blank, an apostrophe or the other
 * separator. Independent of the locale, since the same file is read on many machines.
 */
public final class NumberText {

    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+");
    private static final Pattern DECIMAL = Pattern.compile("([+-]?\\d*)[.,](\\d+)");
    private static final Pattern MAYBE_GROUP = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern GROUPED =
            Pattern.compile("[+-]?[1-9]\\d{0,2}(?:([.,' ])\\d{3})(?:\\1\\d{3})*(?:([.,])\\d+)?");

    private NumberText() {}

    /**
     * Reads a typed text. Edge cases:
     *
     * <ul>
     *   <li>blank: {@link NumberReading.Empty};
     *   <li>{@code 1,250} or {@code 1.250}: {@link NumberReading.Ambiguous}; {@code 0,250} has no thousands: a value;
     *   <li>{@code 1.250,5}, {@code 1 250}, {@code 1'250}: a value;
     *   <li>more than {@value EnteredQuantity#MOST_LETTERS} letters, anything else: {@link NumberReading.NotANumber}.
     * </ul>
     */
    public static NumberReading read(String typed) {
        String text = typed.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2019', '\'')
                .replace('\u2212', '-')
                .strip();
        if (text.isEmpty()) {
            return new NumberReading.Empty();
        }
        if (text.length() > EnteredQuantity.MOST_LETTERS) {
            return new NumberReading.NotANumber();
        }
        if (PLAIN.matcher(text).matches()) {
            return new NumberReading.Value(Double.parseDouble(text));
        }
        if (MAYBE_GROUP.matcher(text).matches()) {
            return new NumberReading.Ambiguous(
                    Double.parseDouble(text.replace(',', '.')),
                    Double.parseDouble(text.replace(",", "").replace(".", "")));
        }
        if (DECIMAL.matcher(text).matches()) {
            return new NumberReading.Value(Double.parseDouble(text.replace(',', '.')));
        }
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.matches() && !grouped.group(1).equals(grouped.group(2))) {
            String whole = text.replace(grouped.group(1), "");
            return new NumberReading.Value(Double.parseDouble(whole.replace(',', '.')));
        }
        return new NumberReading.NotANumber();
    }
}
