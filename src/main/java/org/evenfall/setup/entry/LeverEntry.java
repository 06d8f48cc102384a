package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One lever of the machine, named by the owner.
 *
 * @param label name of the lever, for example "long vane"
 * @param unit unit or scale of the lever, free text, may be empty
 * @param lowest lowest number on the scale
 * @param highest highest number on the scale
 * @param step smallest step that can be set
 * @param widerWhen direction of the scale that spreads wider
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record LeverEntry(
        String label,
        String unit,
        EnteredQuantity lowest,
        EnteredQuantity highest,
        EnteredQuantity step,
        Widening widerWhen,
        UnknownKeys unknownKeys)
        implements LeverEntryBuilder.With {

    /** Nothing typed yet. */
    public static final LeverEntry EMPTY = Blank.of(LeverEntry.class);
}
