package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.BulkDensity;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.TimedWeight;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.BucketMethod;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/** Step 5: one bucket test as it was typed, caught for a time or a known weight timed through. */
final class BucketCatchReader {

    private final ReadSetup read;
    private final boolean byFactor;
    private final @Nullable BulkDensity density;
    private final List<Finding> findings = new ArrayList<>();

    /**
     * @param byFactor whether the rate is set by the factor of a terminal
     * @param density bulk density now; null while it is not known
     */
    BucketCatchReader(ReadSetup read, boolean byFactor, @Nullable BulkDensity density) {
        this.read = read;
        this.byFactor = byFactor;
        this.density = density;
    }

    /** What was found while reading. */
    List<Finding> findings() {
        return findings;
    }

    /** Whether a known weight was timed through in a test. */
    static boolean isTimed(ReadSetup read, EntryPath<BucketEntry> at) {
        return RatePaths.BUCKET_METHOD.at(at).get(read.setup()) == BucketMethod.KNOWN_WEIGHT;
    }

    /**
     * Null while an opening, the time or the known weight, or every catch is missing. An opening typed for one side counts for
     * both; a factor is the same on both sides.
     */
    BucketAssessment.@Nullable Catch test(EntryPath<BucketEntry> at) {
        Double left = read.number(RatePaths.BUCKET_OPENING_LEFT, at);
        Double right = read.number(RatePaths.BUCKET_OPENING_RIGHT, at);
        Double either = left == null ? right : left;
        TimedWeight caught = isTimed(read, at) ? timed(at) : caught(at);
        if (either == null || caught == null) {
            return null;
        }
        return new BucketAssessment.Catch(
                either,
                right == null || byFactor ? either : right,
                caught.timeS(),
                caught.leftKg(),
                caught.rightKg(),
                byFactor ? read.number(RatePaths.BUCKET_SHOWN, at) : null,
                batch(at));
    }

    private @Nullable TimedWeight caught(EntryPath<BucketEntry> at) {
        Double time = read.number(RatePaths.BUCKET_TIME, at);
        List<Double> left = net(RatePaths.BUCKET_LEFT, at);
        List<Double> right = net(RatePaths.BUCKET_RIGHT, at);
        return time == null || (left.isEmpty() && right.isEmpty()) ? null : new TimedWeight(time, left, right);
    }

    private @Nullable TimedWeight timed(EntryPath<BucketEntry> at) {
        Double weight = read.number(RatePaths.BUCKET_KNOWN_WEIGHT, at);
        List<Double> left = numbers(RatePaths.BUCKET_LEFT_TIMES, at);
        List<Double> right = numbers(RatePaths.BUCKET_RIGHT_TIMES, at);
        return weight == null || (left.isEmpty() && right.isEmpty()) ? null : TimedWeight.of(weight, left, right);
    }

    /** The product that was caught; what a test does not state is as it is now. */
    private BucketAssessment.Batch batch(EntryPath<BucketEntry> at) {
        String delivery = RatePaths.BUCKET_DELIVERY.at(at).get(read.setup()).strip();
        Double stated = read.number(RatePaths.BUCKET_BULK_DENSITY, at);
        return new BucketAssessment.Batch(
                delivery.isEmpty() ? read.get(ProductPaths.DELIVERY).strip() : delivery,
                stated == null && density != null ? Double.valueOf(density.meanKgPerL()) : stated);
    }

    /** Weight of the empty bucket of a test, kg; 0 while it is not typed. */
    static double tareKg(ReadSetup read, EntryPath<BucketEntry> at) {
        Double empty = read.number(RatePaths.BUCKET_BUCKET_EMPTY, at);
        return empty == null ? 0 : empty;
    }

    private List<Double> numbers(QuantityList<BucketEntry> side, EntryPath<BucketEntry> test) {
        EntryPath<List<EnteredQuantity>> list = side.at(test);
        List<Double> numbers = new ArrayList<>();
        for (int i = 0; i < list.get(read.setup()).size(); i++) {
            Double number = read.number(QuantityList.item(list, i));
            if (number != null) {
                numbers.add(number);
            }
        }
        return numbers;
    }

    private List<Double> net(QuantityList<BucketEntry> side, EntryPath<BucketEntry> test) {
        EntryPath<List<EnteredQuantity>> list = side.at(test);
        double tareKg = tareKg(read, test);
        List<Double> net = new ArrayList<>();
        for (int i = 0; i < list.get(read.setup()).size(); i++) {
            EntryPath<EnteredQuantity> at = QuantityList.item(list, i);
            Double kg = read.number(at);
            if (kg != null && kg <= tareKg) {
                findings.add(Finding.stop(Step.RATE, "rate.lighterThanBucket", read.typed(side, at))
                        .at(at.pointer()));
            } else if (kg != null) {
                net.add(kg - tareKg);
            }
        }
        return net;
    }
}
