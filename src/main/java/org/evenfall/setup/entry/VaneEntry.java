package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One vane on one disc.
 *
 * @param disc which disc
 * @param label for example "long" or "short"
 * @param length its length now, mm, cm or in
 * @param lengthNew its length when new
 * @param straightSmoothUnholed straight, smooth and without holes
 */
@RecordBuilder
public record VaneEntry(
        Side disc, String label, EnteredQuantity length, EnteredQuantity lengthNew, CheckAnswer straightSmoothUnholed)
        implements VaneEntryBuilder.With {

    /** Nothing typed yet. */
    public static final VaneEntry EMPTY =
            new VaneEntry(Side.UNANSWERED, "", EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, CheckAnswer.UNANSWERED);

    public VaneEntry {
        disc = Objects.requireNonNullElse(disc, Side.UNANSWERED);
        label = Objects.requireNonNullElse(label, "");
        length = EnteredQuantity.orEmpty(length);
        lengthNew = EnteredQuantity.orEmpty(lengthNew);
        straightSmoothUnholed = Objects.requireNonNullElse(straightSmoothUnholed, CheckAnswer.UNANSWERED);
    }
}
