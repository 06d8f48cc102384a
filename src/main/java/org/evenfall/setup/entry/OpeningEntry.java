package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One row of the handbook's opening table.
 *
 * @param opening number on the opening scale
 * @param flow flow at it, kg/min or lb/min
 */
@RecordBuilder
public record OpeningEntry(EnteredQuantity opening, EnteredQuantity flow) implements OpeningEntryBuilder.With {

    /** Nothing typed yet. */
    public static final OpeningEntry EMPTY = new OpeningEntry(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public OpeningEntry {
        opening = EnteredQuantity.orEmpty(opening);
        flow = EnteredQuantity.orEmpty(flow);
    }
}
