package org.evenfall.flight;

/** Range checks of the records of this package. */
final class Ranges {

    private Ranges() {}

    /**
     * Refuses a value that is not within limits, both allowed.
     *
     * @throws IllegalArgumentException with the name, the limits and the value; also for NaN
     */
    static void within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be " + low + " to " + high + ": " + value);
        }
    }

    /**
     * Refuses a value that is not above 0.
     *
     * @throws IllegalArgumentException with the name and the value; also for NaN
     */
    static void positive(String name, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be above 0: " + value);
        }
    }
}
