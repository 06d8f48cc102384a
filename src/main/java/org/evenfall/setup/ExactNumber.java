package org.evenfall.setup;

import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;

/** A setting on a scale, written with as many decimals as it needs. */
final class ExactNumber {

    /** A setting is written with at most so many decimals. */
    private static final int MOST_DECIMALS = 3;

    /** A remainder smaller than this is rounding of the arithmetic, no further decimal. */
    private static final double NO_REMAINDER = 1e-6;

    private ExactNumber() {}

    static EnteredQuantity of(double value, NumberWriter numbers) {
        return new EnteredQuantity(numbers.write(value, decimals(value)), Unit.NONE);
    }

    /** How many decimals a value needs. */
    static int decimals(double value) {
        int decimals = 0;
        while (decimals < MOST_DECIMALS && remainder(value * Math.pow(10, decimals)) > NO_REMAINDER) {
            decimals++;
        }
        return decimals;
    }

    private static double remainder(double value) {
        return Math.abs(value - Math.rint(value));
    }
}
