package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;

/**
 * The outcome for one part, with the reason where a failure is overridden.
 *
 * @param item which part
 * @param answer the outcome
 * @param overrideReason typed reason to go on all the same; printed on the card
 */
@RecordBuilder
public record CheckEntry(CheckItem item, CheckAnswer answer, String overrideReason) implements CheckEntryBuilder.With {

    public CheckEntry {
        Objects.requireNonNull(item, "item");
        answer = Objects.requireNonNullElse(answer, CheckAnswer.UNANSWERED);
        overrideReason = Objects.requireNonNullElse(overrideReason, "");
    }
}
