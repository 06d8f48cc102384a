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
    record Ambiguous(double asDecimal, double asThousands) implements NumberReading {

        /** Decimals with which {@link #asDecimal} is typed so that it can be read in one way only: 1.0, 1.25, 1.8620. */
        public int decimals() {
            int decimals = 1;
            while (decimals < 3
                    && Math.rint(asDecimal * Math.pow(10, decimals)) / Math.pow(10, decimals) != asDecimal) {
                decimals++;
            }
            // three decimals are what can be read two ways
            return decimals == 3 ? 4 : decimals;
        }
    }

    /** No number. */
    record NotANumber() implements NumberReading {}
}
