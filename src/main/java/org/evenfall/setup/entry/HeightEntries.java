package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 4: height above the crop canopy.
 *
 * @param cropHeights height of the crop at several places, cm, m or in
 * @param growth growth expected until the next pass, cm, m or in
 * @param wanted wanted height of the reference point above the crop canopy, cm, m or in
 * @param referencePoint point on the machine from which the height is measured, free text
 * @param left height of the reference point above the ground at the left, cm, m or in
 * @param right height of the reference point above the ground at the right, cm, m or in
 * @param front height of the reference point above the ground at the front, cm, m or in
 * @param rear height of the reference point above the ground at the rear, cm, m or in
 * @param chainPoint height of the upper end of the measuring chain above the reference point, negative below it, cm, m or in
 * @param unknownKeys keys of this object in the file that this version does not know
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
        EnteredQuantity chainPoint,
        UnknownKeys unknownKeys)
        implements HeightEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final HeightEntries EMPTY = Blank.of(HeightEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public HeightEntries {
        cropHeights = List.copyOf(cropHeights);
    }
}
