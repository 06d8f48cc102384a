package org.evenfall.trays;

import org.jspecify.annotations.Nullable;

/**
 * Two tray tests beside each other: before and after, one machine and another, a test and its repeat.
 *
 * @param cvChangePercent CV of the second less that of the first, percentage points
 * @param chanceSecondMoreEven how sure it is that the second is truly the more even, 0 to 1
 * @param scatterPercent what one tray differs by between the two, standard deviation, % of the mean; null when the trays
 *     stood elsewhere
 * @param expectedScatterPercent what counting and reading alone let it differ by, %
 * @param beyondNoise the trays differ by more than counting and reading explain, at 95 %
 */
public record TestChange(
        double cvChangePercent,
        double chanceSecondMoreEven,
        @Nullable Double scatterPercent,
        double expectedScatterPercent,
        boolean beyondNoise) {

    /** The chance as one may say it, %: seven trays carry no certainty, so 1 to 99. */
    public double tellableChancePercent() {
        return Math.max(1, Math.min(99, 100 * chanceSecondMoreEven));
    }
}
