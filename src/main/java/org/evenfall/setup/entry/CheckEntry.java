package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;

/**
 * The result of the check of one part, with the reason where a failure is overridden.
 *
 * @param item part that is checked; must be given
 * @param answer result of the check
 * @param overrideReason reason to go on although the check failed, free text; printed on the card
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record CheckEntry(CheckItem item, CheckAnswer answer, String overrideReason, UnknownKeys unknownKeys)
        implements CheckEntryBuilder.With {

    /** Requires the part. */
    public CheckEntry {
        Objects.requireNonNull(item, "item");
    }
}
