package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One sieved sample, or one that was read as a column.
 *
 * @param amounts amount in each class, finest class (through the finest sieve) first; one more than there are apertures; one unit throughout
 */
@RecordBuilder
public record SievingEntry(List<EnteredQuantity> amounts) implements SievingEntryBuilder.With {

    /** Nothing typed yet. */
    public static final SievingEntry EMPTY = new SievingEntry(List.of());

    public SievingEntry {
        amounts = Lists.typed(amounts);
    }
}
