package org.evenfall.quantity;

/** The result of reading a typed text as a number. */
public sealed interface NumberReading {

    /** Nothing but blanks. */
    record Empty() implements NumberReading {}

    /**
     * A number without ambiguity.
     *
     * @param value the number
     */
    record Value(double value) implements NumberReading {}

    /**
     * One separator and three digits, such as {@code 1,250}: the person must be asked.
     *
     * @param asDecimal with a decimal sign: 1.25
     * @param asThousands with a thousands separator: 1250
     */
    record Ambiguous(double asDecimal, double asThousands) implements NumberReading {}

    /** No number. */
    record NotANumber() implements NumberReading {}
}
