package org.evenfall.quantity;

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
        // "per t" is the one unit of two words, so try every blank from the left
        for (int blank = line.indexOf(' '); blank >= 0; blank = line.indexOf(' ', blank + 1)) {
            Optional<Unit> unit = unitNamed(line.substring(blank + 1));
            if (unit.isPresent()) {
                return new EnteredQuantity(line.substring(0, blank), unit.get());
            }
        }
        return new EnteredQuantity(line, Unit.NONE);
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
