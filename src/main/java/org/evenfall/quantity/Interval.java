package org.evenfall.quantity;

/**
 * A closed interval, in the unit that the name of its field gives.
 *
 * @param low lower end, finite
 * @param high upper end, finite, at least low
 */
public record Interval(double low, double high) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException unless both ends are finite and low is at most high
     */
    public Interval {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new IllegalArgumentException("low and high must be finite, low at most high: " + low + ", " + high);
        }
    }

    /** High less low. */
    public double width() {
        return high - low;
    }

    /** Whether a value lies in the interval, both ends included; false for NaN. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }
}
