package org.evenfall.rate;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;
import org.hipparchus.special.Gamma;

/** Scatter of few repeated measurements and the error that follows. Shares of the mean. */
final class Scatter {

    private Scatter() {}

    /**
     * Unbiased standard deviation of one measurement as a share of its mean, pooled over groups that may have different
     * means: √(Σ (nᵢ − 1) sᵢ²/meanᵢ² / f) / c₄, f = Σ (nᵢ − 1), c₄ = √(2/f) Γ((f + 1)/2) / Γ(f/2). For one group of two this is
     * range / 1.128. Source (from memory): c₄ and d₂ of control charts.
     *
     * @param groups repeats of the same measurement, all above 0; a group may be empty
     * @return empty when no group has two values
     */
    static OptionalDouble share(List<List<Double>> groups) {
        double squares = 0;
        int freedom = 0;
        for (List<Double> group : groups) {
            if (group.size() > 1) {
                DoubleStatistics repeats = DoubleStatistics.of(
                        EnumSet.of(Statistic.MEAN, Statistic.VARIANCE),
                        group.stream().mapToDouble(Double::doubleValue).toArray());
                double mean = repeats.getAsDouble(Statistic.MEAN);
                squares += (group.size() - 1) * repeats.getAsDouble(Statistic.VARIANCE) / (mean * mean);
                freedom += group.size() - 1;
            }
        }
        return freedom == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(squares / freedom) / expectedShare(freedom));
    }

    /** Expected sample standard deviation of normal values in units of the true one, c₄ of f degrees of freedom. */
    private static double expectedShare(int freedom) {
        return Math.sqrt(2.0 / freedom) * Math.exp(Gamma.logGamma((freedom + 1) / 2.0) - Gamma.logGamma(freedom / 2.0));
    }
}
