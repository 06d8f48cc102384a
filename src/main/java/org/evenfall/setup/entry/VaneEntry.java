package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One vane of a disc.
 *
 * @param disc disc on which the vane is
 * @param label name of the vane, for example "long" or "short"
 * @param length length now, mm, cm or in
 * @param lengthNew length when new, mm, cm or in
 * @param straightSmoothUnholed whether it is straight, smooth and without holes
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record VaneEntry(
        Side disc,
        String label,
        EnteredQuantity length,
        EnteredQuantity lengthNew,
        CheckAnswer straightSmoothUnholed,
        UnknownKeys unknownKeys)
        implements VaneEntryBuilder.With {

    /** Nothing typed yet. */
    public static final VaneEntry EMPTY = Blank.of(VaneEntry.class);
}
