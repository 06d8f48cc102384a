package org.evenfall.granule;

import java.util.ArrayList;
import java.util.List;

/** A size distribution as points, for pictures. */
public final class SizeCurve {

    private SizeCurve() {}

    /**
     * One point.
     *
     * @param diameterMm diameter, mm
     * @param percentPerMm share of the mass for each mm of diameter, %/mm: the area under the curve is 100 %
     * @param finerPercent share of the mass that is finer, %
     */
    public record Point(double diameterMm, double percentPerMm, double finerPercent) {}

    /**
     * Points at equal steps of diameter.
     *
     * @param sizes size distribution by mass
     * @param fromMm first diameter, mm, above 0
     * @param toMm last diameter, mm, above fromMm
     * @param points number of points, at least 2
     * @throws IllegalArgumentException unless 0 &lt; fromMm &lt; toMm and points at least 2
     */
    public static List<Point> of(SizeDistribution sizes, double fromMm, double toMm, int points) {
        if (!(fromMm > 0) || !(toMm > fromMm) || points < 2) {
            throw new IllegalArgumentException(
                    "need 0 < fromMm < toMm and at least 2 points: " + fromMm + ", " + toMm + ", " + points);
        }
        List<Point> curve = new ArrayList<>(points);
        for (int i = 0; i < points; i++) {
            double d = fromMm + (toMm - fromMm) * i / (points - 1);
            curve.add(new Point(d, 100 * sizes.densityPerMm(d), 100 * sizes.shareFinerThan(d)));
        }
        return curve;
    }
}
