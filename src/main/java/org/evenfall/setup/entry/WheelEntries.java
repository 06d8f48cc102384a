package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.Typed;

/**
 * Where the tractor's wheels run.
 *
 * @param track middle of the left wheel to middle of the right, m, cm or ft
 * @param tyre width of a tyre or pair of tyres, cm, mm or in
 */
@RecordBuilder
public record WheelEntries(Typed track, Typed tyre) implements WheelEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final WheelEntries EMPTY = new WheelEntries(Typed.EMPTY, Typed.EMPTY);

    public WheelEntries {
        track = Typed.orEmpty(track);
        tyre = Typed.orEmpty(tyre);
    }
}
