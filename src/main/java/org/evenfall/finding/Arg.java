package org.evenfall.finding;

import org.evenfall.quantity.Unit;

/** One argument of a finding's sentence, formatted only where the sentence is shown. */
public sealed interface Arg {

    /**
     * A text shown as it is: a name, a label, an entry as typed.
     *
     * @param text the text
     */
    record Text(String text) implements Arg {}

    /**
     * A number in its unit.
     *
     * @param value the number
     * @param decimals decimals to show, at least 0
     * @param unit its unit
     */
    record Figure(double value, int decimals, Unit unit) implements Arg {}

    /**
     * A word of the bundle.
     *
     * @param key its key
     */
    record Word(String key) implements Arg {}

    /** A text shown as it is. */
    static Arg text(String text) {
        return new Text(text);
    }

    /** A number with a count of decimals in a unit. */
    static Arg number(double value, int decimals, Unit unit) {
        return new Figure(value, decimals, unit);
    }

    /** A whole number without unit. */
    static Arg count(long value) {
        return new Figure(value, 0, Unit.NONE);
    }

    /** A word of the bundle, by its key. */
    static Arg word(String key) {
        return new Word(key);
    }
}
