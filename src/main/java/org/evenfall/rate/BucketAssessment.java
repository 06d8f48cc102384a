package org.evenfall.rate;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/** Bucket tests: flow, rate, agreement, and the next opening or factor. */
public final class BucketAssessment {

    /** Allowed spread between repeats of one outlet, %. Assumption: careful catches repeat within it. */
    public static final double WORST_REPEAT_PERCENT = 3;

    /** Allowed difference of left and right, %. Assumption: the usual tolerance of a rate. */
    public static final double WORST_LEFT_RIGHT_PERCENT = 5;

    /** Scatter of one catch where none was repeated, share. Assumption: half of {@link #WORST_REPEAT_PERCENT}. */
    static final double USUAL_SCATTER_SHARE = 0.015;

    /** Least scatter of one catch, share. Assumption: two repeats can agree by chance. */
    static final double LEAST_SCATTER_SHARE = 0.005;

    private BucketAssessment() {}

    /**
     * The product that was caught.
     *
     * @param delivery delivery; catches of two deliveries are not combined
     * @param bulkDensityKgPerL its bulk density, kg/L, or null
     */
    public record Batch(String delivery, @Nullable Double bulkDensityKgPerL) {

        /** Nothing is known of it. */
        public static final Batch UNKNOWN = new Batch("", null);
    }

    /**
     * One test as caught.
     *
     * @param openingLeft opening left, or the factor of a terminal
     * @param openingRight opening right, or the factor again
     * @param timeS time of each catch, s, above 0
     * @param leftKg net weight of each repeat left, kg
     * @param rightKg net weight of each repeat right, kg; one of the two lists may be empty
     * @param shownKg weight that a terminal shows for one catch of all outlets, kg, above 0; null when none was read
     * @param batch the product
     */
    public record Catch(
            double openingLeft,
            double openingRight,
            double timeS,
            List<Double> leftKg,
            List<Double> rightKg,
            @Nullable Double shownKg,
            Batch batch) {

        /** A test without a terminal. */
        public Catch(double openingLeft, double openingRight, double timeS, List<Double> leftKg, List<Double> rightKg) {
            this(openingLeft, openingRight, timeS, leftKg, rightKg, null, Batch.UNKNOWN);
        }

        /**
         * Checks the ranges.
         *
         * @throws IllegalArgumentException when the time or the weight shown is not above 0 or nothing was caught
         */
        public Catch {
            leftKg = List.copyOf(leftKg);
            rightKg = List.copyOf(rightKg);
            if (!(timeS > 0) || (leftKg.isEmpty() && rightKg.isEmpty())) {
                throw new IllegalArgumentException("timeS must be above 0, at least one weight: " + timeS);
            }
            if (shownKg != null && !(shownKg > 0)) {
                throw new IllegalArgumentException("shownKg must be above 0: " + shownKg);
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
     * @param speedStandardErrorKmPerH error of the measured speed, km/h; 0 where none was measured
     * @param factorRule how the next factor of a terminal is computed; null for an opening by hand
     */
    public record Wanted(
            @Nullable Double flowKgPerMin,
            @Nullable Double widthM,
            @Nullable Double speedKmPerH,
            int outlets,
            double tolerancePercent,
            @Nullable OpeningTable table,
            double speedStandardErrorKmPerH,
            @Nullable FactorRule factorRule) {

        /** An opening by hand, at the planned speed. */
        public Wanted(
                @Nullable Double flowKgPerMin,
                @Nullable Double widthM,
                @Nullable Double speedKmPerH,
                int outlets,
                double tolerancePercent,
                @Nullable OpeningTable table) {
            this(flowKgPerMin, widthM, speedKmPerH, outlets, tolerancePercent, table, 0, null);
        }

        /** Whether the rate is set by the factor of a terminal. */
        public boolean byFactor() {
            return factorRule != null;
        }
    }

    /** Assesses the tests in the order in which they were done; each also uses those before it. */
    public static List<BucketResult> assess(List<Catch> catches, Wanted wanted) {
        List<BucketResult> results = new ArrayList<>();
        for (int i = 0; i < catches.size(); i++) {
            results.add(assess(catches.subList(0, i + 1), catches.get(i), wanted));
        }
        return results;
    }

    private static BucketResult assess(List<Catch> soFar, Catch last, Wanted wanted) {
        CaughtSides sides = CaughtSides.of(soFar, wanted);
        Double ratio = sides.caughtOverExpected();
        Double rate = rate(sides, ratio, wanted);
        BucketFit fit = BucketFit.of(sides, ratio, wanted);
        return new BucketResult(
                last.openingLeft(),
                last.openingRight(),
                new BucketResult.Flow(flow(sides.left()), flow(sides.right()), sides.totalKgPerMin()),
                rate,
                rate == null ? null : Double.valueOf(rate * relativeError(sides, wanted)),
                fit.agreement(),
                fit.keepsOpening()
                        ? new BucketResult.Next(last.openingLeft(), last.openingRight(), null)
                        : next(soFar, ratio, wanted),
                last.batch().bulkDensityKgPerL());
    }

    private static @Nullable Double flow(CaughtSides.@Nullable Side side) {
        return side == null ? null : Double.valueOf(side.kgPerMin());
    }

    /** By hand the flow over the area; with a factor the wanted rate × caught ÷ shown, since the terminal follows the speed. */
    private static @Nullable Double rate(CaughtSides sides, @Nullable Double ratio, Wanted wanted) {
        Double flow = wanted.byFactor()
                ? ratio == null || wanted.flowKgPerMin() == null ? null : Double.valueOf(ratio * wanted.flowKgPerMin())
                : Double.valueOf(sides.totalKgPerMin());
        return flow == null || wanted.widthM() == null || wanted.speedKmPerH() == null
                ? null
                : Double.valueOf(Flows.kgPerHa(flow, wanted.widthM(), wanted.speedKmPerH()));
    }

    private static double relativeError(CaughtSides sides, Wanted wanted) {
        double speed = wanted.byFactor() || wanted.speedKmPerH() == null
                ? 0
                : wanted.speedStandardErrorKmPerH() / wanted.speedKmPerH();
        return Math.hypot(sides.relativeError(), speed);
    }

    /** The next factor, or opening of each side; a side that was never caught takes that of the other. */
    private static BucketResult.Next next(List<Catch> soFar, @Nullable Double ratio, Wanted wanted) {
        if (wanted.factorRule() != null) {
            double old = soFar.get(soFar.size() - 1).openingLeft();
            Double next = ratio == null ? null : NextFactor.of(old, ratio, wanted.factorRule());
            return new BucketResult.Next(next, next, next == null ? null : OpeningSource.BY_FACTOR);
        }
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
}
