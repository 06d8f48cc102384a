package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.CalmPatterns;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Overlap;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.flight.TwinDisc;

/**
 * What is known before any test of how a machine answers when it is set wider: curves of the landing model for this product
 * at this width, in a few variants since the model's discs are not this machine's, and a straight line, which alone is left
 * where product or machine is not known.
 */
public final class ShapeCurves {

    /** Assumption: grid of the direction of the fans, degrees, wide enough for any machine. */
    private static final double LOWEST_DEG = -25;

    private static final double STEP_DEG = 5;
    private static final int POINTS = 24;

    /** Assumption: centre-overlap amplitude a degree of the straight line, %; with two degrees a step, 3 % a step. */
    private static final double LINE_PERCENT_PER_DEG = -1.5;

    /** Assumption: the straight line reaches so far to both sides, degrees. */
    private static final double LINE_REACH_DEG = 65;

    /** Assumption: a fall counts as deeper from this difference on, %, so that equal runs do not depend on rounding. */
    private static final double DEEPER_PERCENT = 1e-9;

    /** Variants of the model: take-off angle and scatter of the fans, degrees. */
    private static final double[][] VARIANTS = {{ThrowModel.TAKE_OFF_DEG, TwinDisc.SPREAD_DEG}, {5, 17}, {14, 24}};

    private ShapeCurves() {}

    /** The straight line without quarter points: the broad default. */
    public static List<ShapeCurve> broad() {
        return List.of(new ShapeCurve(
                -LINE_REACH_DEG,
                2 * LINE_REACH_DEG,
                new double[] {-LINE_REACH_DEG * LINE_PERCENT_PER_DEG, LINE_REACH_DEG * LINE_PERCENT_PER_DEG},
                new double[] {0, 0}));
    }

    /**
     * The broad default and the landing model's variants.
     *
     * @param widthM tramline width, m
     */
    public static List<ShapeCurve> of(ThrowConditions conditions, double widthM) {
        List<ShapeCurve> curves = new ArrayList<>(broad());
        for (double[] variant : VARIANTS) {
            CalmPatterns patterns = new CalmPatterns(conditions, variant[0]);
            double[] centre = new double[POINTS];
            double[] quarter = new double[POINTS];
            for (int i = 0; i < POINTS; i++) {
                Overlap field = new Overlap(
                        patterns.of(LOWEST_DEG + i * STEP_DEG, variant[1], TwinDisc.DISC_SPACING_M),
                        DrivingPattern.ROUND_AND_ROUND);
                amplitudes(field, widthM, centre, quarter, i);
            }
            curves.add(ordinary(centre, quarter));
        }
        return curves;
    }

    /**
     * A curve with its ordinary run: from narrow to wide the centre loses to the overlap. Set ever wider on a narrow tramline
     * the throw reaches past the neighbour and the centre fills again; few set a machine so. The run with the deepest fall is
     * the ordinary one, the narrowest of equals.
     */
    private static ShapeCurve ordinary(double[] centre, double[] quarter) {
        int from = 0;
        int bestFrom = 0;
        int bestTo = 1;
        double deepest = 0;
        for (int i = 1; i < centre.length; i++) {
            if (centre[i] >= centre[i - 1]) {
                from = i;
            } else if (centre[from] - centre[i] > deepest + DEEPER_PERCENT) {
                deepest = centre[from] - centre[i];
                bestFrom = from;
                bestTo = i;
            }
        }
        return new ShapeCurve(LOWEST_DEG, STEP_DEG, centre, quarter, bestFrom, bestTo);
    }

    /** Amplitudes of cos 2πx/W and cos 4πx/W through 0, W/6, W/3 and W/2 of a symmetrical field. */
    private static void amplitudes(Overlap field, double widthM, double[] centre, double[] quarter, int i) {
        double v0 = field.at(widthM, 0);
        double v1 = field.at(widthM, widthM / 6);
        double v2 = field.at(widthM, widthM / 3);
        double v3 = field.at(widthM, widthM / 2);
        double mean = (v0 + 2 * (v1 + v2 + v3)) / 7;
        if (mean > 0) {
            centre[i] = 100 / mean * 2 / 3 * (v0 / 2 + v1 / 2 - v2 / 2 - v3 / 2);
            quarter[i] = 100 / mean * 2 / 3 * (v0 / 2 - v1 / 2 - v2 / 2 + v3 / 2);
        }
    }
}
