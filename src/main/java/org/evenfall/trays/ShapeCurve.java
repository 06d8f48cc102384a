package org.evenfall.trays;

/**
 * How the centre-overlap and the quarter-point amplitudes change while a machine is set wider: a curve over an even grid of
 * the direction in which the discs throw, from narrow to wide, straight between grid points. No scale of a machine shows this
 * direction; only differences along the curve matter. Immutable.
 */
public final class ShapeCurve {

    private final double lowestDeg;
    private final double stepDeg;
    private final double[] centrePercent;
    private final double[] quarterPercent;
    private final double ordinaryLowestDeg;
    private final double ordinaryHighestDeg;

    /**
     * A curve of which every part is ordinary.
     *
     * @param lowestDeg narrowest grid point, degrees
     * @param stepDeg grid step, degrees, above 0
     * @param centrePercent centre-overlap amplitude at each, % of the mean, at least two
     * @param quarterPercent quarter-point amplitude at each, %, as many
     * @throws IllegalArgumentException for a grid that does not rise or other numbers of amplitudes
     */
    ShapeCurve(double lowestDeg, double stepDeg, double[] centrePercent, double[] quarterPercent) {
        this(lowestDeg, stepDeg, centrePercent, quarterPercent, 0, centrePercent.length - 1);
    }

    /**
     * A curve through grid points.
     *
     * @param ordinaryFrom first grid point of the ordinary run, where the centre gets less when set wider
     * @param ordinaryTo its last grid point
     */
    ShapeCurve(
            double lowestDeg,
            double stepDeg,
            double[] centrePercent,
            double[] quarterPercent,
            int ordinaryFrom,
            int ordinaryTo) {
        if (!(stepDeg > 0) || centrePercent.length != quarterPercent.length || centrePercent.length < 2) {
            throw new IllegalArgumentException("stepDeg must be above 0, amplitudes at least 2 and as many of both: "
                    + stepDeg + ", " + centrePercent.length + ", " + quarterPercent.length);
        }
        this.lowestDeg = lowestDeg;
        this.stepDeg = stepDeg;
        this.centrePercent = centrePercent.clone();
        this.quarterPercent = quarterPercent.clone();
        this.ordinaryLowestDeg = lowestDeg + ordinaryFrom * stepDeg;
        this.ordinaryHighestDeg = lowestDeg + ordinaryTo * stepDeg;
    }

    /** Whether a place is on the ordinary run; elsewhere the throw reaches past the neighbour, or hardly any is left. */
    boolean isOrdinary(double placeDeg) {
        return placeDeg >= ordinaryLowestDeg && placeDeg <= ordinaryHighestDeg;
    }

    /** Narrowest grid point, degrees. */
    double lowestDeg() {
        return lowestDeg;
    }

    /** Widest grid point, degrees. */
    double highestDeg() {
        return lowestDeg + stepDeg * (centrePercent.length - 1);
    }

    /** Centre-overlap amplitude at a place, % of the mean. */
    double centrePercent(double placeDeg) {
        return at(centrePercent, placeDeg);
    }

    /** Quarter-point amplitude at a place, % of the mean. */
    double quarterPercent(double placeDeg) {
        return at(quarterPercent, placeDeg);
    }

    /** Linear interpolation; beyond the ends the outermost segment goes on. */
    private double at(double[] values, double placeDeg) {
        double place = (placeDeg - lowestDeg) / stepDeg;
        int i = Math.max(0, Math.min(values.length - 2, (int) place));
        return values[i] + (place - i) * (values[i + 1] - values[i]);
    }
}
