package org.evenfall.rate;

import java.util.EnumSet;
import java.util.List;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;
import org.evenfall.rate.BucketAssessment.Wanted;
import org.jspecify.annotations.Nullable;

/**
 * How a bucket test fits what is wanted.
 *
 * @param agreement its deviations
 * @param keepsOpening no deviation asks for another opening or factor; a side or a good repeat may still be missing
 */
record BucketFit(BucketResult.Agreement agreement, boolean keepsOpening) {

    /** Rounding that does not count against a limit, %. */
    private static final double ROUNDING = 1e-9;

    /** @param ratio flow of all outlets ÷ what they ought to give; null when that is not known */
    static BucketFit of(CaughtSides sides, @Nullable Double ratio, Wanted wanted) {
        Double deviation = ratio == null ? null : Double.valueOf(100 * (ratio - 1));
        Double left = deviation(sides.left(), wanted);
        Double right = deviation(sides.right(), wanted);
        Double leftRight = sides.leftRightPercent();
        Double spread = spreadPercent(sides);
        boolean keeps = deviation != null
                && within(deviation, wanted.tolerancePercent())
                && within(left, wanted.tolerancePercent())
                && within(right, wanted.tolerancePercent())
                && within(leftRight, BucketAssessment.WORST_LEFT_RIGHT_PERCENT);
        boolean within = keeps && sides.complete() && within(spread, BucketAssessment.WORST_REPEAT_PERCENT);
        return new BucketFit(new BucketResult.Agreement(deviation, leftRight, spread, within, left, right), keeps);
    }

    /** What one outlet gives into two buckets has no sides. */
    private static @Nullable Double deviation(CaughtSides.@Nullable Side side, Wanted wanted) {
        return side == null || wanted.outlets() == 1 ? null : side.deviationPercent();
    }

    /** Whether a deviation is within a limit, of either sign; one that is not known exceeds nothing. */
    static boolean within(@Nullable Double percent, double limit) {
        return percent == null || Math.abs(percent) <= limit + ROUNDING;
    }

    /** Largest spread between the repeats of one side, % of their mean; null without repeats. */
    private static @Nullable Double spreadPercent(CaughtSides sides) {
        Double largest = null;
        for (CaughtSides.Side side : sides.caught()) {
            if (side.kg().size() > 1) {
                double spread = spreadPercent(side.kg());
                largest = largest == null ? spread : Math.max(largest, spread);
            }
        }
        return largest;
    }

    private static double spreadPercent(List<Double> kg) {
        DoubleStatistics repeats = DoubleStatistics.of(
                EnumSet.of(Statistic.MEAN, Statistic.MIN, Statistic.MAX),
                kg.stream().mapToDouble(Double::doubleValue).toArray());
        return 100
                * (repeats.getAsDouble(Statistic.MAX) - repeats.getAsDouble(Statistic.MIN))
                / repeats.getAsDouble(Statistic.MEAN);
    }
}
