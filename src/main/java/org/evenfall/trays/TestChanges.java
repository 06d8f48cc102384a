package org.evenfall.trays;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;

/** Compares tray tests. */
public final class TestChanges {

    /** Common practice: a difference counts at 95 %. */
    private static final double CONFIDENCE = 0.95;

    /** Assumption: places nearer than a centimetre are the same. */
    private static final double SAME_PLACE_M = 0.01;

    private TestChanges() {}

    /**
     * The second test against the first. Assumption: the catches of each are normal round their mean, as for the interval of
     * the CV; the ratio of two variances, s₁²/s₂² over σ₁²/σ₂², then follows the F distribution with n₁ − 1 and n₂ − 1
     * degrees of freedom. Two equal CVs give one half.
     */
    public static TestChange of(Uniformity first, Uniformity second) {
        double one = square(first.cvPercent());
        double two = square(second.cvPercent());
        double expected = Math.sqrt(
                (square(first.cv().noisePercent()) + square(second.cv().noisePercent())) / 2);
        Double scatter = samePlaces(first, second) ? Double.valueOf(scatterPercent(first, second)) : null;
        boolean beyond = scatter != null
                && scatter * scatter * (first.trays() - 1)
                        > expected
                                * expected
                                * ChiSquaredDistribution.of(first.trays() - 1.0)
                                        .inverseCumulativeProbability(CONFIDENCE);
        return new TestChange(
                second.cvPercent() - first.cvPercent(),
                chance(one, first.trays() - 1, two, second.trays() - 1),
                second.field().chanceLowerThan(first.field()),
                scatter,
                expected,
                beyond);
    }

    private static double square(double value) {
        return value * value;
    }

    private static double chance(double varianceOne, int freedomOne, double varianceTwo, int freedomTwo) {
        if (varianceOne == varianceTwo) {
            return 0.5;
        }
        return varianceTwo == 0
                ? 1
                : FDistribution.of(freedomOne, freedomTwo).cumulativeProbability(varianceOne / varianceTwo);
    }

    /** Whether two tests have as many trays at the same places, to a centimetre. */
    static boolean samePlaces(Uniformity first, Uniformity second) {
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

    /**
     * Standard deviation of one tray of one test, √(Σ d² / 2 / (n − 1)), d the difference of a tray between the two. Each
     * test is relative to its own mean, which takes one degree of freedom.
     */
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
