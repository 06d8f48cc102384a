package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Where the tractor's wheels run.
 *
 * @param track middle of the left wheel to middle of the right, m, cm or ft
 * @param tyre width of a tyre or pair of tyres, cm, mm or in
 */
@RecordBuilder
public record WheelEntries(EnteredQuantity track, EnteredQuantity tyre) implements WheelEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final WheelEntries EMPTY = new WheelEntries(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public WheelEntries {
        track = EnteredQuantity.orEmpty(track);
        tyre = EnteredQuantity.orEmpty(tyre);
    }
}
