package org.evenfall.quantity;

/** What a typed text turned out to be. */
public sealed interface NumberReading {

    /** Nothing but blanks. */
    record Empty() implements NumberReading {}

    /** A number, the same in every reading. */
    record Value(double value) implements NumberReading {}

    /** One separator and three digits, such as {@code 1,250}: either 1.25 or 1250. To be asked back. */
    record Ambiguous(double asDecimal, double asThousands) implements NumberReading {}

    /** No number. */
    record NotANumber() implements NumberReading {}
}
