package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;

/**
 * Step 2: what it is compared with and the settings to start from.
 *
 * @param library products tested on this machine
 * @param chosen id of the chosen reference, empty while none is chosen
 * @param startWithoutReference go on with no reference
 * @param trayTestOnly go on to a tray test although this width looks out of reach
 * @param settings the settings the steps below start from
 */
@RecordBuilder
public record MatchEntries(
        List<TestedProductEntry> library,
        String chosen,
        YesNo startWithoutReference,
        YesNo trayTestOnly,
        SettingsEntries settings)
        implements MatchEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MatchEntries EMPTY =
            new MatchEntries(List.of(), "", YesNo.UNANSWERED, YesNo.UNANSWERED, SettingsEntries.EMPTY);

    public MatchEntries {
        library = Lists.of(library);
        chosen = Objects.requireNonNullElse(chosen, "");
        startWithoutReference = Objects.requireNonNullElse(startWithoutReference, YesNo.UNANSWERED);
        trayTestOnly = Objects.requireNonNullElse(trayTestOnly, YesNo.UNANSWERED);
        settings = Objects.requireNonNullElse(settings, SettingsEntries.EMPTY);
    }
}
