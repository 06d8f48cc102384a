package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One tray of the long line of trays under one pass.
 *
 * @param position position across the travel, negative left of the pass, m or ft
 * @param amount amount caught, measured like the trays of the tray test
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record SinglePassTrayEntry(EnteredQuantity position, EnteredQuantity amount, UnknownKeys unknownKeys)
        implements SinglePassTrayEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SinglePassTrayEntry EMPTY = Blank.of(SinglePassTrayEntry.class);
}
