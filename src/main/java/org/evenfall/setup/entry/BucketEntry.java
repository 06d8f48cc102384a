package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.Typed;

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
        Typed openingLeft, Typed openingRight, Typed time, Typed bucketEmpty, List<Typed> left, List<Typed> right)
        implements BucketEntryBuilder.With {

    /** Nothing typed yet. */
    public static final BucketEntry EMPTY =
            new BucketEntry(Typed.EMPTY, Typed.EMPTY, Typed.EMPTY, Typed.EMPTY, List.of(), List.of());

    public BucketEntry {
        openingLeft = Typed.orEmpty(openingLeft);
        openingRight = Typed.orEmpty(openingRight);
        time = Typed.orEmpty(time);
        bucketEmpty = Typed.orEmpty(bucketEmpty);
        left = Lists.typed(left);
        right = Lists.typed(right);
    }
}
