package org.evenfall.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number whatever the person's habit: decimal comma or dot, groups of three set off by a blank, an apostrophe
 * or the other separator. Knows no locale, since the same file is read on many machines.
 */
public final class NumberText {

    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+");
    private static final Pattern DECIMAL = Pattern.compile("([+-]?\\d*)[.,](\\d+)");
    private static final Pattern MAYBE_GROUP = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern GROUPED =
            Pattern.compile("[+-]?[1-9]\\d{0,2}(?:([.,' ])\\d{3})(?:\\1\\d{3})*(?:([.,])\\d+)?");

    private NumberText() {}

    public static NumberReading read(String typed) {
        String text = typed.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2019', '\'')
                .replace('\u2212', '-')
                .strip();
        if (text.isEmpty()) {
            return new NumberReading.Empty();
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
