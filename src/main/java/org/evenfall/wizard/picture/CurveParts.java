package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.granule.SizeCurve;

/** The parts of a curve of sizes that fit in its drawing. Clipping the drawing instead would need two more images of its size. */
final class CurveParts {

    private CurveParts() {}

    /**
     * The parts not above a level, each cut where the curve crosses it.
     *
     * @param mostPercentPerMm the level, % per mm
     * @param curve points in the order of their sizes
     */
    static List<List<SizeCurve.Point>> below(double mostPercentPerMm, List<SizeCurve.Point> curve) {
        List<List<SizeCurve.Point>> parts = new ArrayList<>();
        List<SizeCurve.Point> part = new ArrayList<>();
        for (int i = 0; i < curve.size(); i++) {
            SizeCurve.Point now = curve.get(i);
            boolean within = now.percentPerMm() <= mostPercentPerMm;
            if (i > 0 && within != curve.get(i - 1).percentPerMm() <= mostPercentPerMm) {
                part.add(crossing(mostPercentPerMm, curve.get(i - 1), now));
            }
            if (within) {
                part.add(now);
            } else if (!part.isEmpty()) {
                parts.add(part);
                part = new ArrayList<>();
            }
        }
        if (!part.isEmpty()) {
            parts.add(part);
        }
        return parts;
    }

    private static SizeCurve.Point crossing(double level, SizeCurve.Point from, SizeCurve.Point to) {
        double share = (level - from.percentPerMm()) / (to.percentPerMm() - from.percentPerMm());
        return new SizeCurve.Point(
                between(from.diameterMm(), to.diameterMm(), share),
                level,
                between(from.finerPercent(), to.finerPercent(), share));
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }
}
