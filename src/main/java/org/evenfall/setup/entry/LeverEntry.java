package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One lever of the machine, in the owner's words.
 *
 * @param label the owner's own label, for example "long vane"
 * @param unit the unit or scale on the lever, free text, may be empty
 * @param lowest lowest number on the scale
 * @param highest highest number on the scale
 * @param step smallest step that can be set
 * @param widerWhen which way throws wider
 */
@RecordBuilder
public record LeverEntry(
        String label,
        String unit,
        EnteredQuantity lowest,
        EnteredQuantity highest,
        EnteredQuantity step,
        Widening widerWhen)
        implements LeverEntryBuilder.With {

    /** Nothing typed yet. */
    public static final LeverEntry EMPTY = new LeverEntry(
            "", "", EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, Widening.UNANSWERED);

    public LeverEntry {
        label = Objects.requireNonNullElse(label, "");
        unit = Objects.requireNonNullElse(unit, "");
        lowest = EnteredQuantity.orEmpty(lowest);
        highest = EnteredQuantity.orEmpty(highest);
        step = EnteredQuantity.orEmpty(step);
        widerWhen = Objects.requireNonNullElse(widerWhen, Widening.UNANSWERED);
    }
}
