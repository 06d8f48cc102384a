package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.machine.Lever;
import org.hipparchus.random.HaltonSequenceGenerator;

/**
 * One possible answer of all levers to a step up their scales. Its arrays are never compared nor given away.
 *
 * @param slopeDeg how far a step of each lever goes along the curve, degrees, positive towards wider
 * @param quarterSlope what it does to the quarter points apart from the curve, % of the mean a step
 */
@SuppressWarnings("ArrayRecordComponent")
record LeverResponse(double[] slopeDeg, double[] quarterSlope) {

    private static final int DRAWS = 192;

    /** The Halton sequence has so many dimensions; levers beyond share them. */
    private static final int MOST_DIMENSIONS = 40;

    /** Unknowns of a lever: size of a step, its direction, its quarter slope. */
    private static final int UNKNOWNS = 3;

    /** Assumption: standard deviation of the logarithm of {@link Lever#USUAL_STEP_DEG}: 0.8 to 5 degrees in 90 %. */
    private static final double STEP_LN_SD = 0.55;

    /** Assumption: probability that the direction that the owner typed is right; it is soon doubted where tests contradict it. */
    private static final double OWNER_RIGHT = 0.9;

    /** Assumption: standard deviation of the quarter slope, % of the mean a step. */
    private static final double QUARTER_SD_PERCENT = 0.8;

    private static final double NEAREST_TO_END = 1e-4;

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /**
     * A fixed sample of the prior, from the Halton sequence: even, and without chance, so that the same tests give the same
     * advice.
     */
    static List<LeverResponse> prior(List<Lever> levers) {
        int n = levers.size();
        HaltonSequenceGenerator sequence =
                new HaltonSequenceGenerator(Math.max(1, Math.min(MOST_DIMENSIONS, UNKNOWNS * n)));
        // the first point is the corner 0
        sequence.skipTo(1);
        List<LeverResponse> draws = new ArrayList<>();
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] point = sequence.nextVector();
            double[] slope = new double[n];
            double[] quarterSlope = new double[n];
            for (int j = 0; j < n; j++) {
                double size = Lever.USUAL_STEP_DEG * Math.exp(STEP_LN_SD * normal(point[UNKNOWNS * j % point.length]));
                slope[j] = size * sign(levers.get(j), point[(UNKNOWNS * j + 1) % point.length]);
                quarterSlope[j] = QUARTER_SD_PERCENT * normal(point[(UNKNOWNS * j + 2) % point.length]);
            }
            draws.add(new LeverResponse(slope, quarterSlope));
        }
        return draws;
    }

    private static double normal(double share) {
        return NORMAL.inverseCumulativeProbability(clampToOpenInterval(share));
    }

    private static double clampToOpenInterval(double share) {
        return Math.max(NEAREST_TO_END, Math.min(1 - NEAREST_TO_END, share));
    }

    private static double sign(Lever lever, double share) {
        if (lever.widerSign() == 0) {
            return share < 0.5 ? 1 : -1;
        }
        return share < OWNER_RIGHT ? lever.widerSign() : -lever.widerSign();
    }
}
