package org.evenfall.trays;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.evenfall.quantity.Interval;

/**
 * How sure a coefficient of variation from n catches is: the modified McKay interval. With ν = n − 1, K the CV as a share
 * and u the quantile of χ²(ν), an end is K / √(((u + 2)/n − 1) K² + u/ν).
 *
 * <p>Source (from memory): Vangel 1996, The American Statistician 50:21–26; its coverage is checked in the tests.
 *
 * @param n number of catches, at least 3
 */
record CvInterval(int n) {

    /** Assumption: beyond this an upper end is not worth a number, %. */
    static final double HIGHEST_PERCENT = 200;

    /** Outside each end of the 90 % interval. */
    private static final double TAIL = 0.05;

    CvInterval {
        if (n < 3) {
            throw new IllegalArgumentException("n must be at least 3: " + n);
        }
    }

    /**
     * The 90 % interval for the true CV, %; its ends are {@link #HIGHEST_PERCENT} at most, also where there is no upper end.
     *
     * @param cvPercent CV of the catches, %, at least 0
     */
    Interval intervalPercent(double cvPercent) {
        return new Interval(
                end(cvPercent, chi().inverseCumulativeProbability(1 - TAIL)),
                end(cvPercent, chi().inverseCumulativeProbability(TAIL)));
    }

    /**
     * Probability that the true CV is at most a limit, 0 to 1; 1 for equal catches.
     *
     * @param limitPercent limit, %, above 0
     * @param cvPercent CV of the catches, %, at least 0
     */
    double probabilityAtMost(double limitPercent, double cvPercent) {
        if (cvPercent <= 0) {
            return 1;
        }
        double k2 = cvPercent * cvPercent / 1e4;
        double c2 = limitPercent * limitPercent / 1e4;
        double u = k2 * (1 / c2 + 1 - 2.0 / n) / (k2 / n + 1.0 / (n - 1));
        return 1 - chi().cumulativeProbability(u);
    }

    private double end(double cvPercent, double u) {
        double k = cvPercent / 100;
        double square = ((u + 2) / n - 1) * k * k + u / (n - 1);
        return square <= 0 ? HIGHEST_PERCENT : Math.min(HIGHEST_PERCENT, 100 * k / Math.sqrt(square));
    }

    private ChiSquaredDistribution chi() {
        return ChiSquaredDistribution.of(n - 1.0);
    }
}
