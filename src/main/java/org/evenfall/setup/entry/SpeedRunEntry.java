package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One run over a measured length.
 *
 * @param distance m or ft
 * @param time s
 */
@RecordBuilder
public record SpeedRunEntry(EnteredQuantity distance, EnteredQuantity time) implements SpeedRunEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SpeedRunEntry EMPTY = new SpeedRunEntry(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public SpeedRunEntry {
        distance = EnteredQuantity.orEmpty(distance);
        time = EnteredQuantity.orEmpty(time);
    }
}
