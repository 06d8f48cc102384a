package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Typed;

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
public record VaneEntry(Side disc, String label, Typed length, Typed lengthNew, CheckAnswer straightSmoothUnholed)
        implements VaneEntryBuilder.With {

    /** Nothing typed yet. */
    public static final VaneEntry EMPTY =
            new VaneEntry(Side.UNANSWERED, "", Typed.EMPTY, Typed.EMPTY, CheckAnswer.UNANSWERED);

    public VaneEntry {
        disc = Objects.requireNonNullElse(disc, Side.UNANSWERED);
        label = Objects.requireNonNullElse(label, "");
        length = Typed.orEmpty(length);
        lengthNew = Typed.orEmpty(lengthNew);
        straightSmoothUnholed = Objects.requireNonNullElse(straightSmoothUnholed, CheckAnswer.UNANSWERED);
    }
}
