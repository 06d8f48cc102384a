package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * One part of the width against another.
 *
 * @param leftRight left less right; a tray on the tramline counts to neither
 * @param centreOverlap within a quarter of the width of the tramline, less the rest
 * @param quarterPoint around a quarter of the width, less the rest
 */
public record RegionContrasts(Contrast leftRight, Contrast centreOverlap, Contrast quarterPoint) {

    /** Assumption: nearer to the tramline than this share of the width a tray is on neither side. */
    private static final double MIDDLE_SHARE = 0.01;

    /** Whether any of the differences is above twice its standard error. */
    public boolean anySignificant() {
        return leftRight.significant() || centreOverlap.significant() || quarterPoint.significant();
    }

    /**
     * The contrasts of one test.
     *
     * @param positionsM places of the trays, m
     * @param relativePercent catches, % of their mean, as many
     * @param widthM distance between tramlines, m
     * @param noisePercent standard error of one tray, % of the mean, at least 0
     */
    static RegionContrasts of(
            List<Double> positionsM, List<Double> relativePercent, double widthM, double noisePercent) {
        double middle = MIDDLE_SHARE * widthM;
        double quarter = widthM / 4;
        Trays trays = new Trays(positionsM, relativePercent, noisePercent);
        DoublePredicate centre = x -> Math.abs(x) < quarter;
        DoublePredicate quarterPoint = x -> Math.abs(Math.abs(x) - quarter) <= widthM / 8;
        return new RegionContrasts(
                trays.contrast(x -> x < -middle, x -> x > middle),
                trays.contrast(centre, centre.negate()),
                trays.contrast(quarterPoint, quarterPoint.negate()));
    }

    /** The trays of one test, the noise of each the same. */
    private record Trays(List<Double> positionsM, List<Double> relativePercent, double noisePercent) {

        /**
         * Difference of the means of two parts, Σ wᵢ rᵢ with the weights wᵢ = 1/n₁ in one part and −1/n₂ in the other; its
         * standard error is that of one tray times √Σ wᵢ². That of the mean of all trays, by which each is divided, is left
         * out: it changes a contrast by the share of the mean only.
         */
        Contrast contrast(DoublePredicate part, DoublePredicate other) {
            List<Double> one = weights(part);
            List<Double> two = weights(other);
            double difference = 0;
            double squares = 0;
            for (int i = 0; i < positionsM.size(); i++) {
                double weight = one.get(i) - two.get(i);
                difference += weight * relativePercent.get(i);
                squares += weight * weight;
            }
            return new Contrast(difference, noisePercent * Math.sqrt(squares));
        }

        /** 1/n for each of the n trays in a part; where there is none, the mean of all trays takes its place. */
        private List<Double> weights(DoublePredicate part) {
            long inPart = positionsM.stream().filter(x -> part.test(x)).count();
            List<Double> weights = new ArrayList<>();
            for (double x : positionsM) {
                weights.add(inPart == 0 ? 1.0 / positionsM.size() : part.test(x) ? 1.0 / inPart : 0);
            }
            return weights;
        }
    }
}
