package org.evenfall.card;

import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;

/** Numbers of the card with as few decimals as keep them, in the card's language. */
final class Decimals {

    /** Most decimals of what was typed. Assumption: no scale of a machine is finer. */
    private static final int TYPED = 3;

    private Decimals() {}

    /** A number with the fewest decimals, at most some, that differ from it by less than half of the last one. */
    static String fewest(Sentences words, double value, int most, Unit unit) {
        double tolerance = 0.5 * Math.pow(10, -most);
        int decimals = 0;
        while (decimals < most && Math.abs(value - rounded(value, decimals)) >= tolerance) {
            decimals++;
        }
        return words.number(value, decimals, unit);
    }

    private static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.rint(value * scale) / scale;
    }

    /** A number of the machine's own scale. */
    static String scale(Sentences words, double value) {
        return fewest(words, value, TYPED, Unit.NONE);
    }

    /** What was typed, in the unit that was typed, with the decimal sign of the card's language; no number as it is. */
    static String typed(Sentences words, EnteredQuantity typed) {
        EnteredQuantity split = typed.withUnitFromText();
        return NumberText.read(split.text()) instanceof NumberReading.Value value
                ? fewest(words, value.value(), TYPED, split.unit())
                : words.typed(typed);
    }
}
