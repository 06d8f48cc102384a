package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.Typed;

/**
 * One run over a measured length.
 *
 * @param distance m or ft
 * @param time s
 */
@RecordBuilder
public record SpeedRunEntry(Typed distance, Typed time) implements SpeedRunEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SpeedRunEntry EMPTY = new SpeedRunEntry(Typed.EMPTY, Typed.EMPTY);

    public SpeedRunEntry {
        distance = Typed.orEmpty(distance);
        time = Typed.orEmpty(time);
    }
}
