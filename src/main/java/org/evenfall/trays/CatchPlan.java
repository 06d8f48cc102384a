package org.evenfall.trays;

import org.jspecify.annotations.Nullable;

/**
 * What will land in a tray and how noisy counting it is.
 *
 * @param catchPerRunG mass expected in a tray after one run of the three passes, g
 * @param granulesPerRun mass-weighted mean granules in it
 * @param countingNoisePercent counting noise of one run, %
 * @param readingNoisePercent reading noise of one run, %
 * @param runsNeeded smallest number of runs with total noise at most {@link CatchPlans#WANTED_NOISE_PERCENT}, at most
 *     {@link CatchPlans#MOST_RUNS}
 * @param noiseAtRunsPercent total noise after that number of runs, %
 * @param largerTrays larger trays in place of runs; null where one run is enough
 */
public record CatchPlan(
        double catchPerRunG,
        double granulesPerRun,
        double countingNoisePercent,
        double readingNoisePercent,
        int runsNeeded,
        double noiseAtRunsPercent,
        @Nullable LargerTrays largerTrays) {}
