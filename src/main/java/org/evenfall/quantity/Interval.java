package org.evenfall.quantity;

/**
 * A closed interval of numbers. Unit and, for an interval of confidence, its level are stated where it is used.
 *
 * @param low lower end, finite
 * @param high upper end, finite, at least the lower one
 */
public record Interval(double low, double high) {

    /** @throws IllegalArgumentException when an end is not finite or the lower end is above the upper one */
    public Interval {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new IllegalArgumentException(
                    "low and high must be finite and low at most high: " + low + ", " + high);
        }
    }

    /** Upper end less lower end, at least 0. */
    public double width() {
        return high - low;
    }

    /** Whether a value lies in the interval, the ends included; false for NaN. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
