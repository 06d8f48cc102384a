package org.evenfall.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/** Bucket tests: flow, rate, agreement, and the next opening. */
public final class BucketAssessment {

    /** Repeats of one outlet agree within this, %. Ours. */
    public static final double WORST_REPEAT_PERCENT = 3;

    /** Left and right agree within this, %. Ours. */
    public static final double WORST_LEFT_RIGHT_PERCENT = 5;

    private BucketAssessment() {}

    /**
     * One test as caught.
     *
     * @param openingLeft opening left
     * @param openingRight opening right
     * @param timeS time of each catch, s, above 0
     * @param leftKg net weight of each repeat left
     * @param rightKg net weight of each repeat right; one of the two lists may be empty
     */
    public record Catch(
            double openingLeft, double openingRight, double timeS, List<Double> leftKg, List<Double> rightKg) {

        public Catch {
            leftKg = List.copyOf(leftKg);
            rightKg = List.copyOf(rightKg);
            if (!(timeS > 0) || (leftKg.isEmpty() && rightKg.isEmpty())) {
                throw new IllegalArgumentException("time above 0 s and at least one weight: " + timeS);
            }
        }
    }

    /**
     * What is wanted.
     *
     * @param flowKgPerMin wanted flow of all outlets, or null
     * @param rateKgPerHa wanted rate, or null
     * @param widthM tramline width, or null
     * @param speedKmPerH speed, measured where it was, or null
     * @param outlets number of outlets
     * @param tolerancePercent allowed deviation
     * @param table opening table scaled to this product, or null
     */
    public record Wanted(
            @Nullable Double flowKgPerMin,
            @Nullable Double rateKgPerHa,
            @Nullable Double widthM,
            @Nullable Double speedKmPerH,
            int outlets,
            double tolerancePercent,
            @Nullable OpeningTable table) {}

    /** Assesses the tests in the order in which they were done; each sees those before it. */
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
        Double deviation =
                wanted.flowKgPerMin() == null ? null : Double.valueOf(100 * (total / wanted.flowKgPerMin() - 1));
        Double rate = wanted.widthM() == null || wanted.speedKmPerH() == null
                ? null
                : Double.valueOf(Flows.kgPerHa(total, wanted.widthM(), wanted.speedKmPerH()));
        Double leftRight = left == null || right == null ? null : Double.valueOf(200 * (left - right) / (left + right));
        Double spread = spreadPercent(last.leftKg(), last.rightKg());
        boolean within = deviation != null
                && Math.abs(deviation) <= wanted.tolerancePercent() + 1e-9
                && (leftRight == null || Math.abs(leftRight) <= WORST_LEFT_RIGHT_PERCENT + 1e-9)
                && (spread == null || spread <= WORST_REPEAT_PERCENT + 1e-9);
        Double target = wanted.flowKgPerMin() == null ? null : Double.valueOf(wanted.flowKgPerMin() / wanted.outlets());
        NextOpening nextLeft = target == null ? null : NextOpening.of(soFar, true, target, wanted);
        NextOpening nextRight = target == null ? null : NextOpening.of(soFar, false, target, wanted);
        OpeningSource from = nextLeft != null ? nextLeft.from() : nextRight != null ? nextRight.from() : null;
        return new BucketResult(
                last.openingLeft(),
                last.openingRight(),
                left,
                right,
                total,
                rate,
                rate == null ? null : Double.valueOf(rate * relativeError(last)),
                deviation,
                leftRight,
                spread,
                within,
                within ? Double.valueOf(last.openingLeft()) : opening(nextLeft, nextRight),
                within ? Double.valueOf(last.openingRight()) : opening(nextRight, nextLeft),
                within ? null : from);
    }

    private static @Nullable Double opening(@Nullable NextOpening own, @Nullable NextOpening other) {
        if (own != null) {
            return own.opening();
        }
        return other == null ? null : other.opening();
    }

    static @Nullable Double meanFlow(List<Double> kg, double timeS) {
        OptionalDouble mean = kg.stream().mapToDouble(Double::doubleValue).average();
        return mean.isPresent() ? Double.valueOf(mean.getAsDouble() * 60 / timeS) : null;
    }

    /** One side alone stands for the other. */
    private static double total(@Nullable Double left, @Nullable Double right, int outlets) {
        if (outlets == 1) {
            return (left == null ? 0 : left) + (right == null ? 0 : right);
        }
        double one = left == null ? right == null ? 0 : right : left;
        double two = right == null ? one : right;
        return (one + two) / 2 * outlets;
    }

    private static @Nullable Double spreadPercent(List<Double> leftKg, List<Double> rightKg) {
        Double left = spread(leftKg);
        Double right = spread(rightKg);
        if (left == null || right == null) {
            return left == null ? right : left;
        }
        return Math.max(left, right);
    }

    private static @Nullable Double spread(List<Double> kg) {
        if (kg.size() < 2) {
            return null;
        }
        double lowest = kg.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double highest = kg.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double mean = kg.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return 100 * (highest - lowest) / mean;
    }

    /**
     * Relative standard error of the flow: scatter of the repeats where there are any, else 1.5 % (half of what repeats
     * may differ by), over the root of their number; and half a second of the stop watch. Ours.
     */
    private static double relativeError(Catch last) {
        Double spread = spreadPercent(last.leftKg(), last.rightKg());
        int n = Math.max(1, last.leftKg().size() + last.rightKg().size());
        double scatter = spread == null ? 0.015 : Math.max(0.005, spread / 100 / 2);
        double watch = 0.5 / Math.sqrt(12) / last.timeS();
        return Math.sqrt((scatter * scatter + watch * watch) / n);
    }
}
