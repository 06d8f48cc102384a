package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * What was spread with the settings of the card, pass by pass; no card depends on it.
 *
 * @param passes passes as they were driven, in the order typed
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record LogEntries(List<PassEntry> passes, UnknownKeys unknownKeys) implements LogEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final LogEntries EMPTY = Blank.of(LogEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public LogEntries {
        passes = List.copyOf(passes);
    }
}
