package org.evenfall.trays;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How even one test is.
 *
 * @param meanG mean catch, g
 * @param relativePercent each tray, % of the mean
 * @param positionsM their positions, m
 * @param cvPercent coefficient of variation, n − 1, %
 * @param noisePercent counting and reading noise, %
 * @param machineCvPercent CV less noise in squares, %; null: cannot be told from noise
 * @param cvLowPercent lower end of the 90 % interval for the true CV, %
 * @param cvHighPercent upper end, %
 * @param lowestTray index of the lowest tray
 * @param highestTray index of the highest
 * @param leftRightPercent left mean less right mean, % of the mean
 * @param centreOverlapPercent centre mean less overlap mean, % of the mean
 * @param quarterPointPercent quarter points less centre and overlap, % of the mean
 * @param modes shapes with their noise
 * @param verdict verdict at 10, 15, 20 %
 * @param probabilityAtMost10 chance that the true CV is at most 10 %, 0 to 1
 * @param probabilityAtMost15 at most 15 %
 * @param probabilityAtMost20 at most 20 %
 * @param shapePercent the shapes that stand out of the noise, drawn together at each tray, % of the mean; empty: none does
 * @param weightedMeanG mean catch with each tray weighted by the ground it stands for (trapezium rule), g
 * @param meanRateKgPerHa rate of the weighted mean, a caution only: trays are no rate check
 * @param trays trays read
 */
public record Uniformity(
        double meanG,
        List<Double> relativePercent,
        List<Double> positionsM,
        double cvPercent,
        double noisePercent,
        @Nullable Double machineCvPercent,
        double cvLowPercent,
        double cvHighPercent,
        int lowestTray,
        int highestTray,
        double leftRightPercent,
        double centreOverlapPercent,
        double quarterPointPercent,
        List<SpreadShape> modes,
        EvennessVerdict verdict,
        double probabilityAtMost10,
        double probabilityAtMost15,
        double probabilityAtMost20,
        List<Double> shapePercent,
        double weightedMeanG,
        @Nullable Double meanRateKgPerHa,
        int trays) {

    public Uniformity {
        relativePercent = List.copyOf(relativePercent);
        positionsM = List.copyOf(positionsM);
        modes = List.copyOf(modes);
        shapePercent = List.copyOf(shapePercent);
    }
}
