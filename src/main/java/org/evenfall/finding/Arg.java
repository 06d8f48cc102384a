package org.evenfall.finding;

import java.util.List;
import org.evenfall.quantity.Unit;

/** One argument of a finding's sentence, formatted only where the sentence is shown. */
public sealed interface Arg {

    /** A text taken over as it is: a name, a label, what was typed. */
    record Text(String text) implements Arg {}

    /** A number in its unit, with the decimals it deserves. */
    record Figure(double value, int decimals, Unit unit) implements Arg {}

    /** A word of the bundle, by its key. */
    record Word(String key) implements Arg {}

    /** Whole numbers from one to another, for example "24–28". */
    record Span(double low, double high) implements Arg {}

    /** Several arguments with a comma between them. */
    record Series(List<Arg> args) implements Arg {
        public Series {
            args = List.copyOf(args);
        }
    }

    static Arg text(String text) {
        return new Text(text);
    }

    static Arg number(double value, int decimals, Unit unit) {
        return new Figure(value, decimals, unit);
    }

    static Arg count(long value) {
        return new Figure(value, 0, Unit.NONE);
    }

    static Arg word(String key) {
        return new Word(key);
    }
}
