package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.machine.Lever;

/**
 * One assumption of which way the levers work.
 *
 * @param prior probability before any test, 0 to 1
 * @param folded the throw reaches past the neighbouring tramline, so that a step towards wider fills the centre
 * @param widerUp probability of each lever that it throws wider up its scale: 0 or 1 for one that the tests moved
 */
@SuppressWarnings("ArrayRecordComponent")
record Directions(double prior, boolean folded, double[] widerUp) {

    /** Assumption: probability that the direction that the owner typed is right; it is soon doubted where tests contradict it. */
    private static final double OWNER_RIGHT = 0.9;

    /** Assumption: how many machines throw past their neighbour: few, mostly on narrow tramlines. */
    private static final double FOLDED = 0.05;

    /** So many levers are taken one way or the other; any more as their average. */
    private static final int MOST_LEVERS = 6;

    /** All assumptions, their priors with the sum 1. */
    static List<Directions> all(List<Lever> levers, boolean[] moved) {
        List<Directions> all = new ArrayList<>();
        for (boolean folded : new boolean[] {false, true}) {
            double[] widerUp = levers.stream().mapToDouble(Directions::widerUp).toArray();
            add(all, folded ? FOLDED : 1 - FOLDED, folded, widerUp, moved, 0, MOST_LEVERS);
        }
        return all;
    }

    private static double widerUp(Lever lever) {
        return switch (lever.widerSign()) {
            case 1 -> OWNER_RIGHT;
            case -1 -> 1 - OWNER_RIGHT;
            default -> 0.5;
        };
    }

    /** Splits by the levers from one on that the tests moved. */
    private static void add(
            List<Directions> all, double prior, boolean folded, double[] widerUp, boolean[] moved, int from, int left) {
        int lever = from;
        while (lever < moved.length && !moved[lever]) {
            lever++;
        }
        if (lever == moved.length || left == 0) {
            all.add(new Directions(prior, folded, widerUp));
            return;
        }
        for (double up : new double[] {1, 0}) {
            double[] known = widerUp.clone();
            known[lever] = up;
            double chance = up == 1 ? widerUp[lever] : 1 - widerUp[lever];
            add(all, prior * chance, folded, known, moved, lever + 1, left - 1);
        }
    }

    /** Expected change of the centre-overlap shape a step up the scale of each lever, % of the mean. */
    double[] centreSlope() {
        double[] slope = new double[widerUp.length];
        for (int j = 0; j < slope.length; j++) {
            slope[j] = (folded ? 1 : -1) * (2 * widerUp[j] - 1) * AmplitudePrior.CENTRE_STEP_PERCENT;
        }
        return slope;
    }

    /** Variance of that change, %²; the same in all assumptions. */
    double[] slopeVariance() {
        double[] variance = new double[widerUp.length];
        for (int j = 0; j < variance.length; j++) {
            double unknown = 4 * widerUp[j] * (1 - widerUp[j]);
            variance[j] = AmplitudePrior.CENTRE.slope() * AmplitudePrior.CENTRE.slope()
                    + unknown * AmplitudePrior.CENTRE_STEP_PERCENT * AmplitudePrior.CENTRE_STEP_PERCENT;
        }
        return variance;
    }
}
