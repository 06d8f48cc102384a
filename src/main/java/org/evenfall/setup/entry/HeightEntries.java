package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 4: height over the crop.
 *
 * @param cropHeights height of the crop, several places, cm, m or in
 * @param growth growth expected until the next pass
 * @param wanted wanted height of the reference point over the top of the crop
 * @param referencePoint where on the machine that is measured from
 * @param left height of the reference point over the ground now, left
 * @param right right
 * @param front front
 * @param rear rear
 * @param chainPoint where the chain hangs from, over the reference point (negative: below)
 */
@RecordBuilder
public record HeightEntries(
        List<EnteredQuantity> cropHeights,
        EnteredQuantity growth,
        EnteredQuantity wanted,
        String referencePoint,
        EnteredQuantity left,
        EnteredQuantity right,
        EnteredQuantity front,
        EnteredQuantity rear,
        EnteredQuantity chainPoint)
        implements HeightEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final HeightEntries EMPTY = new HeightEntries(
            List.of(),
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            "",
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY);

    public HeightEntries {
        cropHeights = Lists.typed(cropHeights);
        growth = EnteredQuantity.orEmpty(growth);
        wanted = EnteredQuantity.orEmpty(wanted);
        referencePoint = Objects.requireNonNullElse(referencePoint, "");
        left = EnteredQuantity.orEmpty(left);
        right = EnteredQuantity.orEmpty(right);
        front = EnteredQuantity.orEmpty(front);
        rear = EnteredQuantity.orEmpty(rear);
        chainPoint = EnteredQuantity.orEmpty(chainPoint);
    }
}
