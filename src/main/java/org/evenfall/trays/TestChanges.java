package org.evenfall.trays;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;

/** Compares tray tests. */
public final class TestChanges {

    private static final double SURE = 0.95;
    private static final double SAME_PLACE_M = 0.01;

    private TestChanges() {}

    /**
     * The second test against the first. The chance takes the catches of each as normal round their mean, which is what
     * the interval of the CV does too: the ratio of two variances then follows the F distribution.
     */
    public static TestChange of(Uniformity first, Uniformity second) {
        double one = first.cvPercent() * first.cvPercent();
        double two = second.cvPercent() * second.cvPercent();
        double expected = Math.sqrt(
                (first.noisePercent() * first.noisePercent() + second.noisePercent() * second.noisePercent()) / 2);
        Double scatter = samePlaces(first, second) ? Double.valueOf(scatterPercent(first, second)) : null;
        boolean beyond = scatter != null
                && scatter * scatter * (first.trays() - 1)
                        > expected
                                * expected
                                * ChiSquaredDistribution.of(first.trays() - 1.0).inverseCumulativeProbability(SURE);
        return new TestChange(
                second.cvPercent() - first.cvPercent(),
                chance(one, first.trays() - 1, two, second.trays() - 1),
                scatter,
                expected,
                beyond);
    }

    private static double chance(double one, int freeOne, double two, int freeTwo) {
        if (one == two) {
            return 0.5;
        }
        return two == 0 ? 1 : FDistribution.of(freeOne, freeTwo).cumulativeProbability(one / two);
    }

    private static boolean samePlaces(Uniformity first, Uniformity second) {
        if (first.trays() != second.trays()) {
            return false;
        }
        for (int i = 0; i < first.trays(); i++) {
            if (Math.abs(first.positionsM().get(i) - second.positionsM().get(i)) > SAME_PLACE_M) {
                return false;
            }
        }
        return true;
    }

    /** Standard deviation of one tray of one test, from the differences of the two: each is relative to its own mean. */
    private static double scatterPercent(Uniformity first, Uniformity second) {
        double squares = 0;
        for (int i = 0; i < first.trays(); i++) {
            double difference =
                    second.relativePercent().get(i) - first.relativePercent().get(i);
            squares += difference * difference;
        }
        return Math.sqrt(squares / 2 / (first.trays() - 1));
    }
}
