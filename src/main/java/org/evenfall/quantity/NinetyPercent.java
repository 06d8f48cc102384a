package org.evenfall.quantity;

/** The 90 % interval of a normally distributed quantity, the level at which uncertainty is shown. */
public final class NinetyPercent {

    /** Quantile of the standard normal distribution at 95 %: 5 % lie above it, 5 % below its negative. */
    public static final double Z = 1.6449;

    private NinetyPercent() {}

    /**
     * The interval centre ± {@link #Z} × standard error.
     *
     * @throws IllegalArgumentException when the standard error is negative or a value is not finite
     */
    public static Interval of(double centre, double standardError) {
        double half = Z * standardError;
        return new Interval(centre - half, centre + half);
    }
}
