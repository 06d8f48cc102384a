package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * Step 2: the tested product to compare with, and the settings to start from.
 *
 * @param today settings used so far
 * @param library products tested on this machine
 * @param chosen id of the chosen tested product; empty: none is chosen
 * @param startWithoutReference go on without a tested product
 * @param trayTestOnly go on to a tray test although the width is probably out of reach
 * @param settings settings from which the later steps start
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record MatchEntries(
        TodayEntries today,
        List<TestedProductEntry> library,
        String chosen,
        YesNo startWithoutReference,
        YesNo trayTestOnly,
        SettingsEntries settings,
        UnknownKeys unknownKeys)
        implements MatchEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MatchEntries EMPTY = Blank.of(MatchEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public MatchEntries {
        library = List.copyOf(library);
    }
}
