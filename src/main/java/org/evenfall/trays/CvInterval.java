package org.evenfall.trays;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * How sure a coefficient of variation from n catches is: the modified McKay interval (M. G. Vangel 1996, The American
 * Statistician 50:21-26, citation from memory; coverage checked in the tests).
 *
 * @param n number of catches, at least 3
 */
record CvInterval(int n) {

    /** Beyond this an upper end is not worth a number, %. */
    static final double HIGHEST_PERCENT = 200;

    CvInterval {
        if (n < 3) {
            throw new IllegalArgumentException("at least 3 catches: " + n);
        }
    }

    /** Lower end of the 90 % interval, %. */
    double lowPercent(double cvPercent) {
        return limit(cvPercent, chi().inverseCumulativeProbability(0.95));
    }

    /** Upper end, %; {@link #HIGHEST_PERCENT} where it has none. */
    double highPercent(double cvPercent) {
        return limit(cvPercent, chi().inverseCumulativeProbability(0.05));
    }

    /** How sure the true CV is at most a limit, 0 to 1. */
    double probabilityAtMost(double limitPercent, double cvPercent) {
        if (cvPercent <= 0) {
            return 1;
        }
        double k2 = cvPercent * cvPercent / 1e4;
        double c2 = limitPercent * limitPercent / 1e4;
        double u = k2 * (1 / c2 + 1 - 2.0 / n) / (k2 / n + 1.0 / (n - 1));
        return 1 - chi().cumulativeProbability(u);
    }

    private double limit(double cvPercent, double u) {
        double k = cvPercent / 100;
        double square = ((u + 2) / n - 1) * k * k + u / (n - 1);
        return square <= 0 ? HIGHEST_PERCENT : Math.min(HIGHEST_PERCENT, 100 * k / Math.sqrt(square));
    }

    private ChiSquaredDistribution chi() {
        return ChiSquaredDistribution.of(n - 1.0);
    }
}
