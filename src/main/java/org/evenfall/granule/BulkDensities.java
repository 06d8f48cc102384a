package org.evenfall.granule;

import java.util.EnumSet;
import java.util.List;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;

/** Bulk density by weighing struck-level, untapped fillings of one container. */
public final class BulkDensities {

    /** Number of fillings below which another is advised. Assumption: the scatter of two fillings says little. */
    public static final int FEWEST_FILLINGS = 3;

    /**
     * Spread between lowest and highest filling, % of the mean, above which another filling is advised. Assumption:
     * careful fillings scatter by about 1 %.
     */
    public static final double WIDEST_SPREAD_PERCENT = 3;

    /** Scatter of one filling where only one was weighed, share of the mean. Assumption: what careful fillings show. */
    static final double USUAL_SCATTER_SHARE = 0.01;

    /** Rounding room in which a spread still counts as within its limit, %. */
    private static final double ROUNDING_PERCENT = 1e-9;

    private BulkDensities() {}

    /** Whether fillings scatter by more than {@link #WIDEST_SPREAD_PERCENT}. */
    public static boolean differ(double spreadPercent) {
        return spreadPercent > WIDEST_SPREAD_PERCENT + ROUNDING_PERCENT;
    }

    /**
     * Mean bulk density with its standard error: √((s² + r²)/n + r²), s the scatter between fillings (n − 1), r the
     * reading error of the scale, step/√12, which enters once more with the empty weight that is read only once.
     *
     * @param netKg net weight of each filling, kg, above 0, at least one
     * @param volumeL volume of the container, L, above 0
     * @param scaleStepKg smallest step of the scale, kg, at least 0; 0 when not known
     * @throws IllegalArgumentException when a value is outside these ranges
     */
    public static BulkDensity of(List<Double> netKg, double volumeL, double scaleStepKg) {
        if (netKg.isEmpty() || !(volumeL > 0) || netKg.stream().anyMatch(kg -> !(kg > 0)) || !(scaleStepKg >= 0)) {
            throw new IllegalArgumentException("netKg and volumeL must be above 0, scaleStepKg at least 0: " + netKg
                    + ", " + volumeL + ", " + scaleStepKg);
        }
        double[] kgPerL = netKg.stream().mapToDouble(kg -> kg / volumeL).toArray();
        DoubleStatistics statistics = DoubleStatistics.of(
                EnumSet.of(Statistic.MEAN, Statistic.STANDARD_DEVIATION, Statistic.MIN, Statistic.MAX), kgPerL);
        int n = kgPerL.length;
        double mean = statistics.getAsDouble(Statistic.MEAN);
        double sd = statistics.getAsDouble(Statistic.STANDARD_DEVIATION);
        double spreadPercent =
                100 * (statistics.getAsDouble(Statistic.MAX) - statistics.getAsDouble(Statistic.MIN)) / mean;
        double reading = scaleStepKg / Math.sqrt(12) / volumeL;
        double scatter = n > 1 ? sd : USUAL_SCATTER_SHARE * mean;
        double standardError = Math.sqrt((scatter * scatter + reading * reading) / n + reading * reading);
        return new BulkDensity(
                mean,
                sd,
                standardError,
                spreadPercent,
                n,
                n < FEWEST_FILLINGS || differ(spreadPercent),
                netKg.stream().map(kg -> kg / volumeL).toList());
    }
}
