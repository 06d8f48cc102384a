package org.evenfall.trays;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The catches of one test.
 *
 * @param positionsM places of the trays, m, negative left
 * @param relativePercent catch of each, % of their mean, as many
 * @param meanG mean catch, g, above 0
 * @param weightedMeanG mean with each tray weighted by the width it represents (trapezium rule), g
 * @param meanRateKgPerHa rate of the weighted mean, kg/ha, a caution only: trays are no rate check; null where not known
 */
public record CatchSummary(
        List<Double> positionsM,
        List<Double> relativePercent,
        double meanG,
        double weightedMeanG,
        @Nullable Double meanRateKgPerHa) {

    /** @throws IllegalArgumentException without trays, or with another number of places than of catches */
    public CatchSummary {
        positionsM = List.copyOf(positionsM);
        relativePercent = List.copyOf(relativePercent);
        if (positionsM.isEmpty() || positionsM.size() != relativePercent.size()) {
            throw new IllegalArgumentException("positionsM and relativePercent must be as many and not empty: "
                    + positionsM.size() + ", " + relativePercent.size());
        }
    }

    /** How many trays were read. */
    public int trays() {
        return relativePercent.size();
    }

    /** Index of the lowest tray, the first of equals. */
    public int lowestTray() {
        return IntStream.range(0, trays())
                .reduce((best, i) -> relativePercent.get(i) < relativePercent.get(best) ? i : best)
                .orElseThrow();
    }

    /** Index of the highest tray, the first of equals. */
    public int highestTray() {
        return IntStream.range(0, trays())
                .reduce((best, i) -> relativePercent.get(i) > relativePercent.get(best) ? i : best)
                .orElseThrow();
    }
}
