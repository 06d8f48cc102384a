package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One run over a measured distance.
 *
 * @param distance distance, m or ft
 * @param time time, s or min
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record SpeedRunEntry(EnteredQuantity distance, EnteredQuantity time, UnknownKeys unknownKeys)
        implements SpeedRunEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SpeedRunEntry EMPTY = Blank.of(SpeedRunEntry.class);
}
