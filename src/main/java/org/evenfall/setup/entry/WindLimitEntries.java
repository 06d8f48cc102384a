package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * The owner's own limits of the wind speed in a tray test.
 *
 * @param note wind speed above which there is a note, m/s, km/h or mph; not typed: 2 m/s
 * @param warn wind speed above which there is a warning, m/s, km/h or mph; not typed: 3 m/s
 * @param stop wind speed above which there is no test, m/s, km/h or mph; not typed: 4 m/s
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record WindLimitEntries(
        EnteredQuantity note, EnteredQuantity warn, EnteredQuantity stop, UnknownKeys unknownKeys)
        implements WindLimitEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final WindLimitEntries EMPTY = Blank.of(WindLimitEntries.class);
}
