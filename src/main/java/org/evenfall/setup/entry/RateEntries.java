package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 5: plan and check of the rate.
 *
 * @param plan planned rate
 * @param speedRuns runs in which the forward speed was measured
 * @param bucketTests bucket tests, oldest first
 * @param hopperUsed product used, kg, t or lb
 * @param areaDone area spread with it, ha or ac
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record RateEntries(
        PlanEntries plan,
        List<SpeedRunEntry> speedRuns,
        List<BucketEntry> bucketTests,
        EnteredQuantity hopperUsed,
        EnteredQuantity areaDone,
        UnknownKeys unknownKeys)
        implements RateEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final RateEntries EMPTY = Blank.of(RateEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public RateEntries {
        speedRuns = List.copyOf(speedRuns);
        bucketTests = List.copyOf(bucketTests);
    }
}
