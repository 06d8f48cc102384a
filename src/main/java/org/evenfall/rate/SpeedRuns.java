package org.evenfall.rate;

import java.util.EnumSet;
import java.util.List;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Statistic;
import org.jspecify.annotations.Nullable;

/** Forward speed over a measured length, several runs. */
public final class SpeedRuns {

    private SpeedRuns() {}

    /**
     * One run.
     *
     * @param distanceM length, m, above 0
     * @param timeS time, s, above 0
     */
    public record Run(double distanceM, double timeS) {

        /**
         * Checks the ranges.
         *
         * @throws IllegalArgumentException unless both are above 0
         */
        public Run {
            if (!(distanceM > 0) || !(timeS > 0)) {
                throw new IllegalArgumentException("distanceM and timeS must be above 0: " + distanceM + ", " + timeS);
            }
        }
    }

    /**
     * Mean, spread, deviation and error of the runs. Standard error = greater of the scatter between the runs, which holds
     * the timing error as each is timed anew, and the timing error alone, over √n: two runs can agree by chance.
     *
     * @param runs at least one
     * @param plannedKmPerH planned speed, km/h, above 0; null when none is planned
     * @throws IllegalArgumentException when there is no run
     */
    public static SpeedCheck of(List<Run> runs, @Nullable Double plannedKmPerH) {
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("at least one run");
        }
        List<Double> kmPerH = runs.stream()
                .map(run -> Flows.kmPerH(run.distanceM(), run.timeS()))
                .toList();
        DoubleStatistics all = DoubleStatistics.of(
                EnumSet.of(Statistic.MEAN, Statistic.MIN, Statistic.MAX),
                kmPerH.stream().mapToDouble(Double::doubleValue).toArray());
        double mean = all.getAsDouble(Statistic.MEAN);
        double timing = Timing.errorShare(
                Mean.of(runs.stream().mapToDouble(Run::timeS).toArray()).getAsDouble());
        double oneRun = Math.max(Scatter.share(List.of(kmPerH)).orElse(0), timing);
        return new SpeedCheck(
                mean,
                100 * (all.getAsDouble(Statistic.MAX) - all.getAsDouble(Statistic.MIN)) / mean,
                plannedKmPerH == null ? null : Double.valueOf(100 * (mean / plannedKmPerH - 1)),
                runs.size(),
                mean * oneRun / Math.sqrt(runs.size()));
    }
}
