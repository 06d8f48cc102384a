package org.evenfall.setup;

import java.util.List;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.jspecify.annotations.Nullable;

/**
 * Step 5 assessed.
 *
 * @param plan null until the rate can be read
 * @param speed null without a speed run
 * @param bucketTests bucket tests that can be read, oldest first
 * @param hopper null without
 */
public record RateResult(
        @Nullable RatePlan plan,
        @Nullable SpeedCheck speed,
        List<BucketResult> bucketTests,
        @Nullable HopperCheck hopper) {

    /** Copies the list. */
    public RateResult {
        bucketTests = List.copyOf(bucketTests);
    }

    /** The last bucket test that can be read; null while there is none. */
    public @Nullable BucketResult lastBucket() {
        return bucketTests.isEmpty() ? null : bucketTests.get(bucketTests.size() - 1);
    }
}
