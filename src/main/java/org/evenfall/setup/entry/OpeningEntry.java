package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One row of the handbook's opening table.
 *
 * @param opening number on the opening scale
 * @param flow flow at that opening, kg/min or lb/min
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record OpeningEntry(EnteredQuantity opening, EnteredQuantity flow, UnknownKeys unknownKeys)
        implements OpeningEntryBuilder.With {

    /** Nothing typed yet. */
    public static final OpeningEntry EMPTY = Blank.of(OpeningEntry.class);
}
