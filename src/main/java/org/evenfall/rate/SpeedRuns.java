package org.evenfall.rate;

import java.util.EnumSet;
import java.util.List;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;
import org.jspecify.annotations.Nullable;

/** Forward speed over a measured length, several runs. */
public final class SpeedRuns {

    private SpeedRuns() {}

    /**
     * Mean, spread and deviation of the runs.
     *
     * @param kmPerH speed of each run, km/h, above 0, at least one
     * @param plannedKmPerH planned speed, km/h, above 0; null when none is planned
     * @throws IllegalArgumentException when there is no run or one is not above 0
     */
    public static SpeedCheck of(List<Double> kmPerH, @Nullable Double plannedKmPerH) {
        if (kmPerH.isEmpty() || kmPerH.stream().anyMatch(speed -> !(speed > 0))) {
            throw new IllegalArgumentException("at least one run, each kmPerH above 0: " + kmPerH);
        }
        DoubleStatistics runs = DoubleStatistics.of(
                EnumSet.of(Statistic.MEAN, Statistic.MIN, Statistic.MAX),
                kmPerH.stream().mapToDouble(Double::doubleValue).toArray());
        double mean = runs.getAsDouble(Statistic.MEAN);
        return new SpeedCheck(
                mean,
                100 * (runs.getAsDouble(Statistic.MAX) - runs.getAsDouble(Statistic.MIN)) / mean,
                plannedKmPerH == null ? null : Double.valueOf(100 * (mean / plannedKmPerH - 1)),
                kmPerH.size());
    }
}
