package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * The owner's own limits for the wind at a tray test, m/s, km/h or mph.
 *
 * @param note above this a note, 2 m/s unless told
 * @param warn above this a warning, 3 m/s unless told
 * @param stop above this no test, 4 m/s unless told
 */
@RecordBuilder
public record WindLimitEntries(EnteredQuantity note, EnteredQuantity warn, EnteredQuantity stop)
        implements WindLimitEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final WindLimitEntries EMPTY =
            new WindLimitEntries(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public WindLimitEntries {
        note = EnteredQuantity.orEmpty(note);
        warn = EnteredQuantity.orEmpty(warn);
        stop = EnteredQuantity.orEmpty(stop);
    }
}
