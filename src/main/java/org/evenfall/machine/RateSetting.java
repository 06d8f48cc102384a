package org.evenfall.machine;

/** How the rate is set on a machine. */
public enum RateSetting {
    /** Not yet answered: counts as an opening by hand. */
    UNANSWERED,
    /** An opening on a scale, by hand. */
    OPENING,
    /** A terminal with a calibration factor, which opens the outlets itself. */
    FACTOR,
    /** A terminal that also weighs the hopper and corrects its factor while spreading. */
    WEIGHING;

    /** Decimals of an opening that is no whole number: a scale is not read finer. */
    private static final int OPENING_DECIMALS = 1;

    /** Most decimals of a factor. Assumption: terminals take no more. */
    private static final int FACTOR_DECIMALS = 3;

    /** Nearer to a round number than this share of the last decimal, a value is written as that number. */
    private static final double ROUND_WITHIN = 0.5;

    /** Whether the person sets a factor, not an opening. */
    public boolean byFactor() {
        return this == FACTOR || this == WEIGHING;
    }

    /** Decimals with which a value is written: the fewest that keep it, at most one for an opening, three for a factor. */
    public int decimals(double value) {
        int most = byFactor() ? FACTOR_DECIMALS : OPENING_DECIMALS;
        double lastDecimal = Math.pow(10, -most);
        int decimals = 0;
        while (decimals < most && remainder(value, decimals) >= ROUND_WITHIN * lastDecimal) {
            decimals++;
        }
        return decimals;
    }

    private static double remainder(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.abs(value - Math.rint(value * scale) / scale);
    }
}
