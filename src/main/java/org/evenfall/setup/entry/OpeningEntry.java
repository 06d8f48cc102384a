package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.Typed;

/**
 * One row of the handbook's opening table.
 *
 * @param opening number on the opening scale
 * @param flow flow at it, kg/min or lb/min
 */
@RecordBuilder
public record OpeningEntry(Typed opening, Typed flow) implements OpeningEntryBuilder.With {

    /** Nothing typed yet. */
    public static final OpeningEntry EMPTY = new OpeningEntry(Typed.EMPTY, Typed.EMPTY);

    public OpeningEntry {
        opening = Typed.orEmpty(opening);
        flow = Typed.orEmpty(flow);
    }
}
