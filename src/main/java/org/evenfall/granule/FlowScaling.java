package org.evenfall.granule;

/**
 * Flow of a granular product through an opening, Beverloo's form (seen; C and k from memory): W = C ρ √g (D − k d)^2.5.
 * Used only for the ratio between two products at one opening.
 */
public final class FlowScaling {

    public static final double C = 0.58;
    public static final double K = 1.4;

    /** Opening at which ratios are taken when none is known, mm: an ordinary shutter. Ours. */
    public static final double USUAL_OPENING_MM = 50;

    private FlowScaling() {}

    /**
     * Flow, kg/min.
     *
     * @param bulkDensityKgPerL bulk density, kg/L
     * @param openingMm diameter of a round opening, mm, above k d
     * @param d50Mm median diameter, mm
     * @param gravityMPerS2 m/s²
     */
    public static double kgPerMin(double bulkDensityKgPerL, double openingMm, double d50Mm, double gravityMPerS2) {
        double effectiveM = (openingMm - K * d50Mm) / 1000;
        if (!(effectiveM > 0)) {
            throw new IllegalArgumentException("opening must exceed " + K + " × d50: " + openingMm + " mm");
        }
        return 60 * C * 1000 * bulkDensityKgPerL * Math.sqrt(gravityMPerS2) * Math.pow(effectiveM, 2.5);
    }
}
