package org.evenfall.quantity;

import java.util.Objects;
import java.util.Optional;

/**
 * One value exactly as it was typed, with the unit it was typed in. Never refused, never rounded: reading it as a
 * number is another step ({@link NumberText}). In a file it is one text, for example {@code "0,76 kg/L"}.
 */
public record EnteredQuantity(String text, Unit unit) {

    /** Nothing typed yet, no unit chosen. */
    public static final EnteredQuantity EMPTY = new EnteredQuantity("", Unit.NONE);

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

    public EnteredQuantity withText(String newText) {
        return new EnteredQuantity(newText, unit);
    }

    public EnteredQuantity withUnit(Unit newUnit) {
        return new EnteredQuantity(text, newUnit);
    }

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
