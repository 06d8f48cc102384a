package org.evenfall.rate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Statistic;
import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/** Bucket tests: flow, rate, agreement, and the next opening. */
public final class BucketAssessment {

    /** Allowed spread between repeats of one outlet, %. Assumption: careful catches repeat within it. */
    public static final double WORST_REPEAT_PERCENT = 3;

    /** Allowed difference of left and right, %. Assumption: the usual tolerance of a rate. */
    public static final double WORST_LEFT_RIGHT_PERCENT = 5;

    /** Scatter of one catch where none was repeated, share. Assumption: half of {@link #WORST_REPEAT_PERCENT}. */
    static final double USUAL_SCATTER_SHARE = 0.015;

    /** Least scatter of one catch, share. Assumption: two repeats can agree by chance. */
    static final double LEAST_SCATTER_SHARE = 0.005;

    /** Resolution of the time, s. Assumption: a stop watch by hand. */
    static final double WATCH_STEP_S = 0.5;

    /** Rounding that does not count against a limit, %. */
    private static final double ROUNDING = 1e-9;

    private BucketAssessment() {}

    /**
     * One test as caught.
     *
     * @param openingLeft opening left
     * @param openingRight opening right
     * @param timeS time of each catch, s, above 0
     * @param leftKg net weight of each repeat left, kg
     * @param rightKg net weight of each repeat right, kg; one of the two lists may be empty
     */
    public record Catch(
            double openingLeft, double openingRight, double timeS, List<Double> leftKg, List<Double> rightKg) {

        /**
         * Checks the ranges.
         *
         * @throws IllegalArgumentException when the time is not above 0 or nothing was caught
         */
        public Catch {
            leftKg = List.copyOf(leftKg);
            rightKg = List.copyOf(rightKg);
            if (!(timeS > 0) || (leftKg.isEmpty() && rightKg.isEmpty())) {
                throw new IllegalArgumentException("timeS must be above 0, at least one weight: " + timeS);
            }
        }
    }

    /**
     * What is wanted.
     *
     * @param flowKgPerMin wanted flow of all outlets, kg/min, or null
     * @param widthM tramline width, m, or null
     * @param speedKmPerH speed, km/h, the measured one where there is one, or null
     * @param outlets number of outlets, at least 1
     * @param tolerancePercent allowed deviation of the flow, %
     * @param table opening table scaled to this product, or null
     */
    public record Wanted(
            @Nullable Double flowKgPerMin,
            @Nullable Double widthM,
            @Nullable Double speedKmPerH,
            int outlets,
            double tolerancePercent,
            @Nullable OpeningTable table) {}

    /** Assesses the tests in the order in which they were done; each also uses those before it. */
    public static List<BucketResult> assess(List<Catch> catches, Wanted wanted) {
        List<BucketResult> results = new ArrayList<>();
        for (int i = 0; i < catches.size(); i++) {
            results.add(assess(catches.subList(0, i + 1), catches.get(i), wanted));
        }
        return results;
    }

    private static BucketResult assess(List<Catch> soFar, Catch last, Wanted wanted) {
        Double left = meanFlow(last.leftKg(), last.timeS());
        Double right = meanFlow(last.rightKg(), last.timeS());
        double total = total(left, right, wanted.outlets());
        Double rate = wanted.widthM() == null || wanted.speedKmPerH() == null
                ? null
                : Double.valueOf(Flows.kgPerHa(total, wanted.widthM(), wanted.speedKmPerH()));
        BucketResult.Agreement agreement = agreement(last, left, right, total, wanted);
        return new BucketResult(
                last.openingLeft(),
                last.openingRight(),
                new BucketResult.Flow(left, right, total),
                rate,
                rate == null ? null : Double.valueOf(rate * relativeError(last)),
                agreement,
                agreement.withinTolerance()
                        ? new BucketResult.Next(last.openingLeft(), last.openingRight(), null)
                        : next(soFar, wanted));
    }

    private static BucketResult.Agreement agreement(
            Catch last, @Nullable Double left, @Nullable Double right, double total, Wanted wanted) {
        Double deviation =
                wanted.flowKgPerMin() == null ? null : Double.valueOf(100 * (total / wanted.flowKgPerMin() - 1));
        // what one outlet gives into two buckets has no sides
        Double leftRight = left == null || right == null || wanted.outlets() == 1
                ? null
                : Double.valueOf(200 * (left - right) / (left + right));
        Double spread = spreadPercent(last);
        boolean within = deviation != null
                && Math.abs(deviation) <= wanted.tolerancePercent() + ROUNDING
                && (leftRight == null || Math.abs(leftRight) <= WORST_LEFT_RIGHT_PERCENT + ROUNDING)
                && (spread == null || spread <= WORST_REPEAT_PERCENT + ROUNDING);
        return new BucketResult.Agreement(deviation, leftRight, spread, within);
    }

    /** The next opening of each side; a side that was never caught takes that of the other. */
    private static BucketResult.Next next(List<Catch> soFar, Wanted wanted) {
        if (wanted.flowKgPerMin() == null) {
            return new BucketResult.Next(null, null, null);
        }
        double outletKgPerMin = wanted.flowKgPerMin() / wanted.outlets();
        NextOpening left = NextOpening.of(soFar, true, outletKgPerMin, wanted);
        NextOpening right = NextOpening.of(soFar, false, outletKgPerMin, wanted);
        NextOpening forLeft = left == null ? right : left;
        NextOpening forRight = right == null ? left : right;
        return forLeft == null || forRight == null
                ? new BucketResult.Next(null, null, null)
                : new BucketResult.Next(forLeft.opening(), forRight.opening(), forLeft.source());
    }

    /** Mean flow of the repeats of one outlet, kg/min; null without any. */
    static @Nullable Double meanFlow(List<Double> kg, double timeS) {
        return kg.isEmpty() ? null : Double.valueOf(Mean.of(array(kg)).getAsDouble() * 60 / timeS);
    }

    /**
     * Flow of all outlets, kg/min: with one outlet what was caught on either side, else the mean of both sides times the
     * outlets; one side alone counts for both.
     */
    private static double total(@Nullable Double left, @Nullable Double right, int outlets) {
        if (outlets == 1) {
            return (left == null ? 0 : left) + (right == null ? 0 : right);
        }
        double one = left == null ? right == null ? 0 : right : left;
        double two = right == null ? one : right;
        return (one + two) / 2 * outlets;
    }

    /** Largest spread between the repeats of one side, % of their mean; null without repeats. */
    private static @Nullable Double spreadPercent(Catch last) {
        Double left = spreadPercent(last.leftKg());
        Double right = spreadPercent(last.rightKg());
        if (left == null || right == null) {
            return left == null ? right : left;
        }
        return Math.max(left, right);
    }

    private static @Nullable Double spreadPercent(List<Double> kg) {
        if (kg.size() < 2) {
            return null;
        }
        DoubleStatistics repeats =
                DoubleStatistics.of(EnumSet.of(Statistic.MEAN, Statistic.MIN, Statistic.MAX), array(kg));
        return 100
                * (repeats.getAsDouble(Statistic.MAX) - repeats.getAsDouble(Statistic.MIN))
                / repeats.getAsDouble(Statistic.MEAN);
    }

    /**
     * Relative standard error of the flow: √((s² + w²)/n), s half the spread of the repeats, at least
     * {@link #LEAST_SCATTER_SHARE}, else {@link #USUAL_SCATTER_SHARE}; w the resolution of the time, step/√12; n the
     * catches of both sides.
     */
    private static double relativeError(Catch last) {
        Double spread = spreadPercent(last);
        int n = last.leftKg().size() + last.rightKg().size();
        double scatter = spread == null ? USUAL_SCATTER_SHARE : Math.max(LEAST_SCATTER_SHARE, spread / 100 / 2);
        double watch = WATCH_STEP_S / Math.sqrt(12) / last.timeS();
        return Math.sqrt((scatter * scatter + watch * watch) / n);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
