package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 5: plan and check.
 *
 * @param plan the plan
 * @param speedRuns speed measured
 * @param bucketTests bucket tests, oldest first
 * @param hopperUsed product used, kg, t or lb
 * @param areaDone area done with it, ha or ac
 */
@RecordBuilder
public record RateEntries(
        PlanEntries plan,
        List<SpeedRunEntry> speedRuns,
        List<BucketEntry> bucketTests,
        EnteredQuantity hopperUsed,
        EnteredQuantity areaDone)
        implements RateEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final RateEntries EMPTY =
            new RateEntries(PlanEntries.EMPTY, List.of(), List.of(), EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public RateEntries {
        plan = Objects.requireNonNullElse(plan, PlanEntries.EMPTY);
        speedRuns = Lists.of(speedRuns);
        bucketTests = Lists.of(bucketTests);
        hopperUsed = EnteredQuantity.orEmpty(hopperUsed);
        areaDone = EnteredQuantity.orEmpty(areaDone);
    }
}
