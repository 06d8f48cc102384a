package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * Speed over a measured length.
 *
 * @param meanKmPerH mean of the runs, km/h
 * @param spreadPercent highest less lowest run, % of the mean
 * @param deviationPercent mean from the planned speed, %; null when none is planned
 * @param runs number of runs
 * @param standardErrorKmPerH standard error of the mean, km/h
 */
public record SpeedCheck(
        double meanKmPerH,
        double spreadPercent,
        @Nullable Double deviationPercent,
        int runs,
        double standardErrorKmPerH) {}
