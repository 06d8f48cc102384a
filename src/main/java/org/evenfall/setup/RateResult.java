package org.evenfall.setup;

import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.rate.AgainstOther;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.jspecify.annotations.Nullable;

/**
 * Step 5 assessed.
 *
 * @param plan null until the rate can be read
 * @param againstOther this product against the one used before; null while a nitrogen share is not known
 * @param nitrogenSplits the season's nitrogen by pass; null while no pass is listed
 * @param speed null without a speed run
 * @param bucketTests bucket tests that count, oldest first
 * @param bucketIndexes which of the entered bucket tests each is, from 0
 * @param hopper null without
 */
public record RateResult(
        @Nullable RatePlan plan,
        @Nullable AgainstOther againstOther,
        @Nullable NitrogenSplits nitrogenSplits,
        @Nullable SpeedCheck speed,
        List<BucketResult> bucketTests,
        List<Integer> bucketIndexes,
        @Nullable HopperCheck hopper) {

    /** Copies the lists. */
    public RateResult {
        bucketTests = List.copyOf(bucketTests);
        bucketIndexes = List.copyOf(bucketIndexes);
    }

    /** Every entered bucket test counts, and no product before is known. */
    RateResult(
            @Nullable RatePlan plan,
            @Nullable SpeedCheck speed,
            List<BucketResult> bucketTests,
            @Nullable HopperCheck hopper) {
        this(
                plan,
                null,
                null,
                speed,
                bucketTests,
                IntStream.range(0, bucketTests.size()).boxed().toList(),
                hopper);
    }

    /** The last bucket test that counts; null while there is none. */
    public @Nullable BucketResult lastBucket() {
        return bucketTests.isEmpty() ? null : bucketTests.get(bucketTests.size() - 1);
    }
}
