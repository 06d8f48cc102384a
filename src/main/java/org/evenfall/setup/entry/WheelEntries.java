package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Wheels of the tractor.
 *
 * @param track track width, from the middle of the left wheel to the middle of the right wheel, m, cm or ft
 * @param tyre width of a tyre or pair of tyres, cm, mm or in
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record WheelEntries(EnteredQuantity track, EnteredQuantity tyre, UnknownKeys unknownKeys)
        implements WheelEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final WheelEntries EMPTY = Blank.of(WheelEntries.class);
}
