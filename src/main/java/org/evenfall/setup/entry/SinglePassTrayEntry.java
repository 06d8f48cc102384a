package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One tray of the long line under one pass.
 *
 * @param position where it stands across the travel, m or ft, negative left
 * @param amount what it caught, read as the trays of the test are
 */
@RecordBuilder
public record SinglePassTrayEntry(EnteredQuantity position, EnteredQuantity amount)
        implements SinglePassTrayEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SinglePassTrayEntry EMPTY =
            new SinglePassTrayEntry(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public SinglePassTrayEntry {
        position = EnteredQuantity.orEmpty(position);
        amount = EnteredQuantity.orEmpty(amount);
    }
}
