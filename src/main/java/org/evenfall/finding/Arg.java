package org.evenfall.finding;

import java.time.LocalDate;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
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
     * A number as the person typed it, with its unit.
     *
     * @param digits the number as typed, for example "36,0"
     * @param unit the unit typed or chosen
     */
    record Typed(String digits, Unit unit) implements Arg {}

    /**
     * A date in words, for example "3 April 2027".
     *
     * @param date the date
     */
    record Day(LocalDate date) implements Arg {}

    /**
     * A word of the bundle.
     *
     * @param key its key
     */
    record Word(String key) implements Arg {}

    /**
     * Whole numbers from one to another, for example "24–28".
     *
     * @param low first number
     * @param high last number
     */
    record Span(double low, double high) implements Arg {}

    /**
     * Several arguments with a comma between them.
     *
     * @param args the arguments in their order
     */
    record Series(List<Arg> args) implements Arg {
        /** Copies the list. */
        public Series {
            args = List.copyOf(args);
        }
    }

    /** A text shown as it is. */
    static Arg text(String text) {
        return new Text(text);
    }

    /** A number with a count of decimals in a unit. */
    static Arg number(double value, int decimals, Unit unit) {
        return new Figure(value, decimals, unit);
    }

    /** What was typed, with the unit typed behind it, else the one chosen. */
    static Arg typed(EnteredQuantity entered) {
        EnteredQuantity split = entered.withUnitFromText();
        return new Typed(split.text().strip(), split.unit());
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
