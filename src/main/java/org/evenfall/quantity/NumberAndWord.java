package org.evenfall.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with a word behind it, as people type a unit: "36 yd", "75cm".
 *
 * @param number the number as typed, never blank
 * @param word what follows, without blanks around it, never blank
 */
public record NumberAndWord(String number, String word) {

    private static final Pattern NUMBER_THEN_WORD =
            Pattern.compile("\\s*([+\\-\u2212]?[\\d.,'\u2019\\s\u00a0\u202f]*\\d)\\s*([^\\d\\s.,+'\u2019].*)");

    /** The two parts; empty where the text does not begin with a number or nothing follows it. */
    public static Optional<NumberAndWord> of(String text) {
        // the pattern tries every blank again, so the length is limited first
        String typed = text.strip();
        Matcher parts = NUMBER_THEN_WORD.matcher(typed);
        if (typed.length() > EnteredQuantity.MOST_LETTERS
                || !parts.matches()
                || parts.group(2).isBlank()
                || NumberText.read(parts.group(1)) instanceof NumberReading.NotANumber) {
            return Optional.empty();
        }
        return Optional.of(new NumberAndWord(parts.group(1), parts.group(2).strip()));
    }
}
