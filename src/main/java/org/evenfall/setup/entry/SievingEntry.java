package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One sieved sample.
 *
 * @param amounts amount in each class, finest class (through the finest sieve) first; one more than there are apertures; all in one unit
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record SievingEntry(List<EnteredQuantity> amounts, UnknownKeys unknownKeys) implements SievingEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SievingEntry EMPTY = Blank.of(SievingEntry.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public SievingEntry {
        amounts = List.copyOf(amounts);
    }
}
