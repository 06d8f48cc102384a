package org.evenfall.trays;

import org.jspecify.annotations.Nullable;

/**
 * Two tray tests compared: before and after, one machine and another, a test and its repeat.
 *
 * @param cvChangePercent CV of the second less that of the first, percentage points
 * @param chanceSecondMoreEven probability that the second is the more even, 0 to 1, as if the catches were independent
 *     normal values; published, not shown
 * @param chanceSecondFieldMoreEven probability that the field CV of the second is the lower one, 0 to 1
 * @param scatterPercent standard deviation of one tray of one test, from the differences of the two, % of the mean; null
 *     where the trays had other places
 * @param expectedScatterPercent the same from counting and reading alone, %
 * @param beyondNoise the trays differ by more than counting and reading explain, at 95 %
 */
public record TestChange(
        double cvChangePercent,
        double chanceSecondMoreEven,
        double chanceSecondFieldMoreEven,
        @Nullable Double scatterPercent,
        double expectedScatterPercent,
        boolean beyondNoise) {

    /** Assumption: seven trays carry no certainty, so a chance is stated as 1 to 99 %. */
    private static final double LOWEST_STATED_PERCENT = 1;

    private static final double HIGHEST_STATED_PERCENT = 99;

    /** The chance that the second is the more even as it may be stated, 1 to 99 %. */
    public double tellableChancePercent() {
        return Math.max(LOWEST_STATED_PERCENT, Math.min(HIGHEST_STATED_PERCENT, 100 * chanceSecondFieldMoreEven));
    }
}
