package org.evenfall.rate;

import java.util.List;
import org.apache.commons.statistics.descriptive.Mean;
import org.evenfall.rate.BucketAssessment.Catch;
import org.evenfall.rate.BucketAssessment.Wanted;
import org.jspecify.annotations.Nullable;

/**
 * What is known of both sides at the opening of a test: its own catches; for a side that it did not catch, those of the
 * latest earlier test at the same openings with the same delivery.
 *
 * @param left left; null when never caught
 * @param right right; null when never caught
 * @param outlets number of outlets
 */
record CaughtSides(@Nullable Side left, @Nullable Side right, int outlets) {

    /** Openings that differ by less are the same. */
    private static final double SAME_OPENING = 1e-9;

    /**
     * One side, all its repeats.
     *
     * @param kgPerMin mean flow, kg/min
     * @param expectedKgPerMin flow that the outlet ought to give, kg/min; null when it is not known
     * @param kg each repeat, kg
     * @param timingShare timing error of one catch, share
     */
    record Side(double kgPerMin, @Nullable Double expectedKgPerMin, List<Double> kg, double timingShare) {

        /** Flow from what it ought to be, %; null when that is not known. */
        @Nullable
        Double deviationPercent() {
            return expectedKgPerMin == null ? null : Double.valueOf(100 * (kgPerMin / expectedKgPerMin - 1));
        }
    }

    /** @param soFar the tests, the one in question last; one outlet has no sides to supply from earlier tests */
    static CaughtSides of(List<Catch> soFar, Wanted wanted) {
        Catch last = soFar.get(soFar.size() - 1);
        Side left = null;
        Side right = null;
        for (Catch one : wanted.outlets() == 1 ? List.of(last) : soFar) {
            if (sameOpening(one, last)) {
                left = one.leftKg().isEmpty() ? left : side(one, one.leftKg(), wanted);
                right = one.rightKg().isEmpty() ? right : side(one, one.rightKg(), wanted);
            }
        }
        return new CaughtSides(left, right, wanted.outlets());
    }

    private static boolean sameOpening(Catch one, Catch other) {
        return Math.abs(one.openingLeft() - other.openingLeft()) < SAME_OPENING
                && Math.abs(one.openingRight() - other.openingRight()) < SAME_OPENING
                && one.batch().delivery().equals(other.batch().delivery());
    }

    private static Side side(Catch test, List<Double> kg, Wanted wanted) {
        Double shownKg = wanted.byFactor() ? test.shownKg() : null;
        Double all = shownKg == null ? wanted.flowKgPerMin() : Double.valueOf(shownKg * 60 / test.timeS());
        return new Side(
                flow(kg, test.timeS()),
                all == null ? null : Double.valueOf(all / wanted.outlets()),
                kg,
                // the terminal counts over the same time as the bucket
                shownKg == null ? Timing.errorShare(test.timeS()) : 0);
    }

    /** Mean flow of the repeats of one outlet, kg/min; at least one. */
    static double flow(List<Double> kg, double timeS) {
        return Mean.of(kg.stream().mapToDouble(Double::doubleValue).toArray()).getAsDouble() * 60 / timeS;
    }

    /** Whether every outlet of which there is one a side was caught; one outlet is caught on either side. */
    boolean complete() {
        return outlets == 1 || (left != null && right != null);
    }

    /** Both sides, or the one caught. */
    List<Side> caught() {
        if (left == null || right == null) {
            return left != null ? List.of(left) : right != null ? List.of(right) : List.of();
        }
        return List.of(left, right);
    }

    /**
     * Flow of all outlets, kg/min: with one outlet what was caught on either side, else the mean of both sides times the
     * outlets; one side alone counts for both.
     */
    double totalKgPerMin() {
        double sum = caught().stream().mapToDouble(Side::kgPerMin).sum();
        return outlets == 1 ? sum : sum / caught().size() * outlets;
    }

    /** Flow of all outlets ÷ what they ought to give; null when that is not known. */
    @Nullable
    Double caughtOverExpected() {
        double sum = 0;
        for (Side side : caught()) {
            if (side.expectedKgPerMin() == null) {
                return null;
            }
            sum += side.kgPerMin() / side.expectedKgPerMin();
        }
        return outlets == 1 ? sum : sum / caught().size();
    }

    /** Left less right, % of their mean; null with one side or one outlet: what one outlet gives into two buckets has no sides. */
    @Nullable
    Double leftRightPercent() {
        return left == null || right == null || outlets == 1
                ? null
                : Double.valueOf(200 * (left.kgPerMin() - right.kgPerMin()) / (left.kgPerMin() + right.kgPerMin()));
    }

    /**
     * Relative standard error of the flow: each side's mean has the error of one catch over √n, and weighs by its flow. Error
     * of one catch = greater of the scatter of the repeats, which holds the timing error as each is timed anew, and √(s² + t²),
     * s {@link BucketAssessment#LEAST_SCATTER_SHARE}, or {@link BucketAssessment#USUAL_SCATTER_SHARE} without repeats, t the
     * timing error.
     */
    double relativeError() {
        var repeats = Scatter.share(caught().stream().map(Side::kg).toList());
        double least =
                repeats.isPresent() ? BucketAssessment.LEAST_SCATTER_SHARE : BucketAssessment.USUAL_SCATTER_SHARE;
        double sum = caught().stream().mapToDouble(Side::kgPerMin).sum();
        double squares = 0;
        for (Side side : caught()) {
            double one = Math.max(repeats.orElse(0), Math.hypot(least, side.timingShare()));
            double weight = side.kgPerMin() / sum;
            squares += weight * weight * one * one / side.kg().size();
        }
        return Math.sqrt(squares);
    }
}
