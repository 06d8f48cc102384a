package org.evenfall.setup;

import org.evenfall.quantity.Interval;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.Timing;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/**
 * One bucket test as it is done: what is set, what to expect, what came of it.
 *
 * @param timed a known weight is timed through; else caught for a time
 * @param openingLeft opening left or factor, as typed, else the one to start from; null while neither is known
 * @param openingRight opening right or factor, the same way
 * @param expected what one outlet ought to give; null while the flow is not planned
 * @param result what came of it; null until it counts
 */
public record BucketFacts(
        boolean timed,
        @Nullable Double openingLeft,
        @Nullable Double openingRight,
        @Nullable Expected expected,
        @Nullable BucketResult result) {

    /** Time for which a catch is given where none is typed and no bucket holds the offered ones, s. */
    private static final double HALF_MINUTE_S = 30;

    /**
     * What one outlet ought to give.
     *
     * @param kgPerMin its flow, kg/min
     * @param seconds time of the catch, or the time that the known weight ought to take, s
     * @param kg net weight in that time, kg
     * @param goodKg net weights within the tolerance, kg
     * @param scalesKg the same with the empty bucket; null while its weight is not typed
     * @param goodS times of the known weight within the tolerance, s
     * @param timingShare error of timing by hand, share of the time
     */
    public record Expected(
            double kgPerMin,
            double seconds,
            double kg,
            Interval goodKg,
            @Nullable Interval scalesKg,
            Interval goodS,
            double timingShare) {

        private static Expected of(
                double kgPerMin, double seconds, double kg, double tolerancePercent, @Nullable Double emptyKg) {
            double band = tolerancePercent / 100;
            Interval good = new Interval(kg * (1 - band), kg * (1 + band));
            return new Expected(
                    kgPerMin,
                    seconds,
                    kg,
                    good,
                    emptyKg == null ? null : new Interval(good.low() + emptyKg, good.high() + emptyKg),
                    new Interval(seconds / (1 + band), seconds / (1 - band)),
                    Timing.errorShare(seconds));
        }
    }

    /**
     * Of the test of an index; where there is none yet, of the first to be done.
     *
     * @param index which of the entered tests, from 0
     */
    public static BucketFacts of(Assessment assessment, int index) {
        ReadSetup read = assessment.read();
        EntryPath<BucketEntry> at = RatePaths.BUCKET_TESTS.item(index);
        RateResult rate = assessment.rate();
        int counted = rate.bucketIndexes().indexOf(index);
        Double left = read.number(RatePaths.BUCKET_OPENING_LEFT, at);
        Double right = read.number(RatePaths.BUCKET_OPENING_RIGHT, at);
        Double first = rate.plan() == null ? null : rate.plan().flow().firstOpening();
        Double start = left == null ? right == null ? first : right : left;
        return new BucketFacts(
                BucketCatchReader.isTimed(read, at),
                start,
                right == null || assessment.machine().rateSetting().byFactor() ? start : right,
                expected(assessment, at),
                counted < 0 ? null : rate.bucketTests().get(counted));
    }

    /**
     * What the scales read within the tolerance with the bucket of a test, for the time that fits it, kg; null while the empty
     * bucket was not weighed or nothing is planned.
     *
     * @param index which of the entered tests, from 0
     */
    public static @Nullable Interval plannedScalesKg(Assessment assessment, int index) {
        RatePlan plan = assessment.rate().plan();
        Interval net = plan == null ? null : plan.bucket().toleranceKg();
        Double empty = assessment.read().number(RatePaths.BUCKET_BUCKET_EMPTY, RatePaths.BUCKET_TESTS.item(index));
        return net == null || empty == null ? null : new Interval(net.low() + empty, net.high() + empty);
    }

    private static @Nullable Expected expected(Assessment assessment, EntryPath<BucketEntry> at) {
        ReadSetup read = assessment.read();
        Double flow = outletKgPerMin(assessment);
        if (flow == null) {
            return null;
        }
        double tolerance = RateAssessor.tolerancePercent(read);
        Double empty = read.number(RatePaths.BUCKET_BUCKET_EMPTY, at);
        if (BucketCatchReader.isTimed(read, at)) {
            Double weight = read.number(RatePaths.BUCKET_KNOWN_WEIGHT, at);
            return weight == null ? null : Expected.of(flow, weight / flow * 60, weight, tolerance, null);
        }
        Double typed = read.number(RatePaths.BUCKET_TIME, at);
        RatePlan plan = assessment.rate().plan();
        Double offered = plan == null ? null : plan.bucket().seconds();
        double seconds = typed != null ? typed : offered != null ? offered : HALF_MINUTE_S;
        return Expected.of(flow, seconds, flow * seconds / 60, tolerance, empty);
    }

    /** Flow wanted of one outlet: by hand at the measured speed where there is one, as the test is held against it. */
    private static @Nullable Double outletKgPerMin(Assessment assessment) {
        RateResult rate = assessment.rate();
        RatePlan plan = rate.plan();
        if (plan == null || plan.flow().outletKgPerMin() == null || plan.flow().speedKmPerH() == null) {
            return null;
        }
        boolean measured =
                rate.speed() != null && !assessment.machine().rateSetting().byFactor();
        return measured && rate.speed() != null
                ? Double.valueOf(plan.flow().outletKgPerMin()
                        * rate.speed().meanKmPerH()
                        / plan.flow().speedKmPerH())
                : plan.flow().outletKgPerMin();
    }
}
