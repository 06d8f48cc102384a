package org.evenfall.trays;

import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Pearson type III distribution: a gamma distribution moved along its axis. Taken for a distribution of which the first
 * three cumulants are known.
 */
final class PearsonIii {

    /** Smallest skewness taken; below it is a normal distribution to five digits. */
    private static final double SMALLEST_SKEWNESS = 1e-3;

    private final double start;
    private final GammaDistribution gamma;

    private PearsonIii(double start, GammaDistribution gamma) {
        this.start = start;
        this.gamma = gamma;
    }

    /**
     * The distribution with these cumulants.
     *
     * @param mean first cumulant
     * @param variance second cumulant, above 0
     * @param third third cumulant; where its skewness is below {@value #SMALLEST_SKEWNESS}, that skewness
     */
    static PearsonIii of(double mean, double variance, double third) {
        double skewed = Math.max(third, SMALLEST_SKEWNESS * Math.pow(variance, 1.5));
        double shape = 4 * variance * variance * variance / (skewed * skewed);
        double scale = skewed / (2 * variance);
        return new PearsonIii(mean - shape * scale, GammaDistribution.of(shape, scale));
    }

    /** Probability of a value at most this, 0 to 1. */
    double probabilityAtMost(double value) {
        return gamma.cumulativeProbability(value - start);
    }
}
