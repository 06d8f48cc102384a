package org.evenfall.setup.path;

/**
 * A closed range of numbers.
 *
 * @param low lowest
 * @param high highest, not below {@code low}
 */
public record Limits(double low, double high) {

    /** Room for rounding when a typed unit is converted, in the unit of the limits. */
    private static final double ROUNDING = 1e-9;

    /** @throws IllegalArgumentException when {@code low} is above {@code high} or one of them is no number */
    public Limits {
        if (!(low <= high)) {
            throw new IllegalArgumentException("limits: low " + low + ", high " + high);
        }
    }

    /** Whether a value is within, the limits included. */
    public boolean contain(double value) {
        return value >= low - ROUNDING && value <= high + ROUNDING;
    }

    /** Whether other limits are within these. */
    boolean contain(Limits other) {
        return low <= other.low && other.high <= high;
    }
}
