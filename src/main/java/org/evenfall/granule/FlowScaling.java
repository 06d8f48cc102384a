package org.evenfall.granule;

/**
 * Flow of a granular product through an opening in Beverloo's form: W = C ρ √g (D − k d)^2.5. Used only for the ratio
 * between two products at one opening. Source: Beverloo's form. Source (from memory): Beverloo's constants, {@link #C} and
 * {@link #K}.
 */
public final class FlowScaling {

    /** Factor of the flow, without unit. */
    public static final double C = 0.58;

    /** Width of the empty rim of the opening, in median diameters. */
    public static final double K = 1.4;

    /** Exponent of the effective opening. */
    public static final double EXPONENT = 2.5;

    /** Opening at which ratios are taken when none is known, mm. Assumption: an ordinary shutter. */
    public static final double USUAL_OPENING_MM = 50;

    private FlowScaling() {}

    /**
     * Flow, kg/min.
     *
     * @param bulkDensityKgPerL bulk density, kg/L
     * @param openingMm diameter of a round opening, mm, above k d
     * @param d50Mm median diameter, mm
     * @param gravityMPerS2 gravity, m/s²
     * @throws IllegalArgumentException when the opening is not above k d
     */
    public static double kgPerMin(double bulkDensityKgPerL, double openingMm, double d50Mm, double gravityMPerS2) {
        double effectiveM = (openingMm - K * d50Mm) / 1000;
        if (!(effectiveM > 0)) {
            throw new IllegalArgumentException("opening must exceed " + K + " × d50: " + openingMm + " mm");
        }
        return 60 * C * 1000 * bulkDensityKgPerL * Math.sqrt(gravityMPerS2) * Math.pow(effectiveM, EXPONENT);
    }
}
