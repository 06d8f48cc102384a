package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.Typed;

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
        List<Typed> cropHeights,
        Typed growth,
        Typed wanted,
        String referencePoint,
        Typed left,
        Typed right,
        Typed front,
        Typed rear,
        Typed chainPoint)
        implements HeightEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final HeightEntries EMPTY = new HeightEntries(
            List.of(), Typed.EMPTY, Typed.EMPTY, "", Typed.EMPTY, Typed.EMPTY, Typed.EMPTY, Typed.EMPTY, Typed.EMPTY);

    public HeightEntries {
        cropHeights = Lists.typed(cropHeights);
        growth = Typed.orEmpty(growth);
        wanted = Typed.orEmpty(wanted);
        referencePoint = Objects.requireNonNullElse(referencePoint, "");
        left = Typed.orEmpty(left);
        right = Typed.orEmpty(right);
        front = Typed.orEmpty(front);
        rear = Typed.orEmpty(rear);
        chainPoint = Typed.orEmpty(chainPoint);
    }
}
