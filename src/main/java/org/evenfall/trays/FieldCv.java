package org.evenfall.trays;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.NinetyPercent;

/**
 * Estimate of the variation across the whole field from a few trays: what an infinitely fine row of noiseless trays would
 * read. The tray CV is another number: it counts the counting noise as unevenness, and the place midway between two
 * tramlines twice.
 *
 * <p>The field is a sum of cosines across the width with random sizes ({@link FieldCvModes}, {@link FieldCvPrior}), the
 * catches are the field plus noise of known size; their posterior gives the CV ({@link FieldCvPosterior}).
 *
 * <p>What the interval covers was measured on simulated machines (profile {@code proof}), for a true field CV of 5 to 35 %:
 * with seven trays 96 to 98 %, which is wider than it need be, with thirteen 92 to 95, with 33 89 to 92. Where the one fault
 * is a gap or heap of 2 to 4 m, it can hide between the trays: 59 % with seven, 75 % with thirteen.
 *
 * @param medianPercent median of the field CV, %, at least 0
 * @param intervalPercent its 90 % interval, from the 5 % to the 95 % quantile, %
 * @param probabilityAtMost15 chance that the field CV is at most {@link CvLimits#FIELD_PERCENT}, 0 to 1
 */
public record FieldCv(double medianPercent, Interval intervalPercent, double probabilityAtMost15) {

    /** Chance below the lower end of the interval, and above the upper end. */
    private static final double OUTSIDE_ON_A_SIDE = 0.05;

    /** Assumption: an estimate that rests on a model is never shown as surer than this. */
    private static final double MOST_STATED_PERCENT = 99;

    private static final double LEAST_STATED_PERCENT = 1;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException unless the interval contains the median, is at least 0, and the chance is from 0 to
     *     1
     */
    public FieldCv {
        if (!(intervalPercent.low() >= 0)
                || !intervalPercent.contains(medianPercent)
                || !(probabilityAtMost15 >= 0 && probabilityAtMost15 <= 1)) {
            throw new IllegalArgumentException(
                    "medianPercent in its interval, this at least 0, probabilityAtMost15 from 0 to 1: " + medianPercent
                            + ", " + intervalPercent + ", " + probabilityAtMost15);
        }
    }

    /**
     * The estimate from one test, or from the means of repeats.
     *
     * @param positionsM places of the trays in any order, m from the tramline; two trays may be at one place
     * @param catches catch of each tray in any one unit, at least 0, their mean above 0
     * @param tramlines how the field is driven
     * @param noisePercent standard deviation of counting and reading at the mean catch, %, at least 0
     *     ({@link CatchPlans#noisePercent})
     * @throws IllegalArgumentException when a value is out of its range, or there are fewer than {@link
     *     TrayLayouts#FEWEST_TRAYS} or more than {@link TrayLayouts#MOST_TRAYS} trays
     */
    public static FieldCv of(List<Double> positionsM, List<Double> catches, Tramlines tramlines, double noisePercent) {
        int trays = catches.size();
        if (positionsM.size() != trays || trays < TrayLayouts.FEWEST_TRAYS || trays > TrayLayouts.MOST_TRAYS) {
            throw new IllegalArgumentException("one position a catch, " + TrayLayouts.FEWEST_TRAYS + " to "
                    + TrayLayouts.MOST_TRAYS + " catches: " + positionsM + ", " + catches);
        }
        double mean =
                catches.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        if (catches.stream().anyMatch(each -> !(each >= 0)) || !(mean > 0) || !Double.isFinite(mean)) {
            throw new IllegalArgumentException("catches at least 0, their mean above 0: " + catches);
        }
        if (positionsM.stream().anyMatch(each -> !Double.isFinite(each))
                || !(noisePercent >= 0)
                || !Double.isFinite(noisePercent)) {
            throw new IllegalArgumentException(
                    "positions finite, noisePercent finite and at least 0: " + positionsM + ", " + noisePercent);
        }
        double[] relative = catches.stream().mapToDouble(each -> each / mean).toArray();
        FieldCvPosterior posterior = FieldCvPosterior.of(
                new FieldCvData(FieldCvModes.at(positionsM, tramlines), relative, noisePercent / 100));
        double median = posterior.quantile(0.5);
        // each quantile is off by its accuracy: it stays on its side of the median
        double low = Math.min(median, posterior.quantile(OUTSIDE_ON_A_SIDE));
        double high = Math.max(median, posterior.quantile(1 - OUTSIDE_ON_A_SIDE));
        return new FieldCv(
                100 * median,
                new Interval(100 * low, 100 * high),
                posterior.probabilityAtMost(CvLimits.FIELD_PERCENT / 100));
    }

    /** What the estimate means for the job. */
    public EvennessVerdict verdict() {
        return EvennessVerdict.of(medianPercent, probabilityAtMost15);
    }

    /** Whether the word "good" is right: even, and the median is at most {@link CvLimits#GOOD_PERCENT}. */
    public boolean good() {
        return verdict() == EvennessVerdict.EVEN && medianPercent <= CvLimits.GOOD_PERCENT;
    }

    /**
     * The chance as it is shown, %, from {@value #LEAST_STATED_PERCENT} to {@value #MOST_STATED_PERCENT}.
     */
    public double statedChancePercent() {
        return Math.max(LEAST_STATED_PERCENT, Math.min(MOST_STATED_PERCENT, 100 * probabilityAtMost15));
    }

    /** Lower end of the 90 % interval, %. */
    public double lowPercent() {
        return intervalPercent.low();
    }

    /** Upper end of the 90 % interval, %. */
    public double highPercent() {
        return intervalPercent.high();
    }

    /**
     * Probability that this field CV is lower than another, 0 to 1; one half for two equal estimates. Assumption: each is
     * log-normal with its median and the width of its interval, and they are independent; how often it comes true is
     * counted on simulated machines in the tests.
     */
    public double chanceLowerThan(FieldCv other) {
        double difference = Math.log(other.medianPercent / medianPercent);
        double error = Math.hypot(logError(), other.logError());
        return difference == 0 ? 0.5 : NormalDistribution.of(0, error).cumulativeProbability(difference);
    }

    /** Standard deviation of the logarithm, from the 90 % interval. */
    private double logError() {
        return Math.log(intervalPercent.high() / intervalPercent.low()) / (2 * NinetyPercent.Z);
    }
}
