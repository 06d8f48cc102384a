package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.Typed;

/**
 * One tray of the long line under one pass.
 *
 * @param position where it stands across the travel, m or ft, negative left
 * @param amount what it caught, read as the trays of the test are
 */
@RecordBuilder
public record LineTrayEntry(Typed position, Typed amount) implements LineTrayEntryBuilder.With {

    /** Nothing typed yet. */
    public static final LineTrayEntry EMPTY = new LineTrayEntry(Typed.EMPTY, Typed.EMPTY);

    public LineTrayEntry {
        position = Typed.orEmpty(position);
        amount = Typed.orEmpty(amount);
    }
}
