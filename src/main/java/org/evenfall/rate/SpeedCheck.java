package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * Speed over a measured length.
 *
 * @param meanKmPerH mean of the runs, km/h
 * @param spreadPercent highest less lowest, %
 * @param deviationPercent from the planned speed, %
 * @param runs runs
 */
public record SpeedCheck(
        double meanKmPerH, double spreadPercent, @Nullable Double deviationPercent, int runs) {}
