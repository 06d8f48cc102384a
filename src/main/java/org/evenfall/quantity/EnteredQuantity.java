package org.evenfall.quantity;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * One value exactly as it was typed, with its unit. Never refused, never rounded: reading it as a number is another
 * step ({@link NumberText}). In a file it is one text, for example {@code "0,76 kg/L"}.
 *
 * @param text the text as typed; null becomes empty
 * @param unit the unit chosen; null becomes {@link Unit#NONE}
 */
public record EnteredQuantity(String text, Unit unit) {

    /** Most letters of a number with its unit. Assumption: nobody types a longer one. */
    public static final int MOST_LETTERS = 200;

    /** Letters of the longest symbol of a unit. */
    private static final int LONGEST_SYMBOL = Arrays.stream(Unit.values())
            .mapToInt(unit -> unit.symbol().length())
            .max()
            .orElse(0);

    /** Nothing typed yet, no unit chosen. */
    public static final EnteredQuantity EMPTY = new EnteredQuantity("", Unit.NONE);

    /** Replaces null. */
    public EnteredQuantity {
        text = Objects.requireNonNullElse(text, "");
        unit = Objects.requireNonNullElse(unit, Unit.NONE);
    }

    /** Text and unit in one: the last word is the unit when it is one, all before it is the text. */
    public static EnteredQuantity parse(String line) {
        Optional<Unit> whole = unitNamed(line);
        if (whole.isPresent()) {
            return new EnteredQuantity("", whole.get());
        }
        // "per t" is the one unit of two words, so try every blank before the last letters, from the left
        String words = line.stripTrailing();
        int from = Math.max(0, words.length() - LONGEST_SYMBOL - 1);
        for (int blank = words.indexOf(' ', from); blank >= 0; blank = words.indexOf(' ', blank + 1)) {
            Optional<Unit> unit = unitNamed(words.substring(blank + 1));
            if (unit.isPresent()) {
                return new EnteredQuantity(words.substring(0, firstBlank(words, blank)), unit.get());
            }
        }
        return new EnteredQuantity(line, Unit.NONE);
    }

    /** The first of the blanks that end in this one. */
    private static int firstBlank(String line, int last) {
        int first = last;
        for (int i = last - 1; i >= 0 && Character.isWhitespace(line.charAt(i)); i--) {
            first = line.charAt(i) == ' ' ? i : first;
        }
        return first;
    }

    private static Optional<Unit> unitNamed(String word) {
        return word.isBlank() ? Optional.empty() : Unit.ofSymbol(word);
    }

    /** The same unit with another text. */
    public EnteredQuantity withText(String newText) {
        return new EnteredQuantity(newText, unit);
    }

    /** The same text with another unit; the number is not converted. */
    public EnteredQuantity withUnit(Unit newUnit) {
        return new EnteredQuantity(text, newUnit);
    }

    /**
     * The same with the unit that was typed behind the number in place of the one chosen, with or without a blank before it
     * ("28 ft", "75cm"); unchanged where there is none.
     */
    public EnteredQuantity withUnitFromText() {
        return NumberAndWord.of(text)
                .flatMap(parts -> unitNamed(parts.word()).map(behind -> new EnteredQuantity(parts.number(), behind)))
                .orElse(this);
    }

    /** Whether nothing but blanks was typed. */
    public boolean isBlank() {
        return text.isBlank();
    }

    /** The inverse of {@link #parse}. */
    @Override
    public String toString() {
        if (unit == Unit.NONE) {
            return text;
        }
        return text.isEmpty() ? unit.symbol() : text + " " + unit.symbol();
    }
}
