package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One field spread once.
 *
 * @param date the day, may be empty
 * @param field the field or block, as the farm calls it
 * @param area area spread, ha or ac
 * @param productDrawn product drawn from the stock for it, kg, t or lb
 * @param note free text
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record PassEntry(
        String date,
        String field,
        EnteredQuantity area,
        EnteredQuantity productDrawn,
        String note,
        UnknownKeys unknownKeys)
        implements PassEntryBuilder.With {

    /** Nothing typed yet. */
    public static final PassEntry EMPTY = Blank.of(PassEntry.class);
}
