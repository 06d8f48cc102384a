package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One bucket test: every attempt is kept.
 *
 * @param openingLeft opening left
 * @param openingRight opening right
 * @param time s
 * @param bucketEmpty weight of the empty bucket, kg, g or lb
 * @param left weight caught left with the bucket, each repeat
 * @param right weight caught right with the bucket, each repeat
 */
@RecordBuilder
public record BucketEntry(
        EnteredQuantity openingLeft,
        EnteredQuantity openingRight,
        EnteredQuantity time,
        EnteredQuantity bucketEmpty,
        List<EnteredQuantity> left,
        List<EnteredQuantity> right)
        implements BucketEntryBuilder.With {

    /** Nothing typed yet. */
    public static final BucketEntry EMPTY = new BucketEntry(
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            List.of(),
            List.of());

    public BucketEntry {
        openingLeft = EnteredQuantity.orEmpty(openingLeft);
        openingRight = EnteredQuantity.orEmpty(openingRight);
        time = EnteredQuantity.orEmpty(time);
        bucketEmpty = EnteredQuantity.orEmpty(bucketEmpty);
        left = Lists.typed(left);
        right = Lists.typed(right);
    }
}
