package org.evenfall.trays;

/**
 * How the centre-overlap and the quarter-point amplitudes change while a machine is set wider: a curve over an even grid of
 * a setting that nobody reads off a scale, rising from narrow to wide. Immutable.
 */
public final class ShapeCurve {

    private final double lowest;
    private final double step;
    private final double[] centre;
    private final double[] quarter;

    /**
     * @param lowest narrowest setting of the grid
     * @param step grid step, above 0
     * @param centre centre-overlap amplitude at each, % of the mean
     * @param quarter quarter-point amplitude at each, %, as many
     */
    ShapeCurve(double lowest, double step, double[] centre, double[] quarter) {
        if (!(step > 0) || centre.length != quarter.length || centre.length < 2) {
            throw new IllegalArgumentException("need a rising grid and as many amplitudes of both: " + step + ", "
                    + centre.length + ", " + quarter.length);
        }
        this.lowest = lowest;
        this.step = step;
        this.centre = centre.clone();
        this.quarter = quarter.clone();
    }

    double lowest() {
        return lowest;
    }

    double highest() {
        return lowest + step * (centre.length - 1);
    }

    double centrePercent(double at) {
        return on(centre, at);
    }

    double quarterPercent(double at) {
        return on(quarter, at);
    }

    /** Straight between grid points, and on along the last piece beyond the ends. */
    private double on(double[] values, double at) {
        double place = (at - lowest) / step;
        int i = Math.max(0, Math.min(values.length - 2, (int) place));
        return values[i] + (place - i) * (values[i + 1] - values[i]);
    }
}
