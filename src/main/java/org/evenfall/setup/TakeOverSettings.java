package org.evenfall.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.SettingsPaths;

/** A tested product is chosen, and its settings are taken over as those to start from. */
public final class TakeOverSettings {

    private TakeOverSettings() {}

    /**
     * A setting that taking over changes.
     *
     * @param name name of the lever or of the setting
     * @param before as typed before; empty where nothing was
     * @param after as the tested product had it
     */
    public record Change(Arg name, String before, String after) {}

    /**
     * The setup with this tested product chosen. Its settings are taken over only where no lever is typed, so that nothing
     * typed is replaced without a word.
     *
     * @param id of an entry in the setup's library, or of today's settings; an id that is not there is noted only
     */
    public static Setup choose(Setup setup, String id) {
        Setup chosen = setup.withMatch(setup.match().withChosen(id));
        return setup.match().settings().levers().isEmpty() ? takenOver(chosen) : chosen;
    }

    /** The setup with the settings of the chosen product; what that does not say stays as it was. */
    public static Setup takenOver(Setup setup) {
        return chosen(setup)
                .map(its -> setup.withMatch(
                        setup.match().withSettings(merged(setup.match().settings(), its))))
                .orElse(setup);
    }

    /** What taking over would change; empty where all is as the chosen product had it, or none is chosen. */
    public static List<Change> changes(Setup setup) {
        SettingsEntries before = setup.match().settings();
        SettingsEntries after = takenOver(setup).match().settings();
        List<Change> changes = new ArrayList<>();
        after.levers()
                .forEach((lever, value) -> add(
                        changes, Arg.text(lever), before.levers().getOrDefault(lever, EnteredQuantity.EMPTY), value));
        add(changes, Arg.word(SettingsPaths.PTO_SPEED.labelKey()), before.ptoSpeed(), after.ptoSpeed());
        add(
                changes,
                Arg.word(SettingsPaths.HEIGHT_OVER_CROP.labelKey()),
                before.heightOverCrop(),
                after.heightOverCrop());
        add(changes, Arg.word(SettingsPaths.TILT.labelKey()), before.tilt(), after.tilt());
        return List.copyOf(changes);
    }

    private static void add(List<Change> changes, Arg name, EnteredQuantity before, EnteredQuantity after) {
        if (!before.equals(after) && !after.isBlank()) {
            changes.add(new Change(name, before.isBlank() ? "" : before.toString(), after.toString()));
        }
    }

    private static Optional<SettingsEntries> chosen(Setup setup) {
        MatchEntries match = setup.match();
        if (match.chosen().equals(TestedProduct.TODAY_ID)) {
            return Optional.of(match.today().settings());
        }
        return match.library().stream()
                .filter(entry -> entry.id().equals(match.chosen()))
                .findFirst()
                .map(entry -> entry.settings());
    }

    private static SettingsEntries merged(SettingsEntries own, SettingsEntries its) {
        Map<String, EnteredQuantity> levers = new LinkedHashMap<>(own.levers());
        its.levers().forEach((lever, value) -> {
            if (!value.isBlank()) {
                levers.put(lever, value);
            }
        });
        return own.withLevers(levers)
                .withPtoSpeed(either(its.ptoSpeed(), own.ptoSpeed()))
                .withHeightOverCrop(either(its.heightOverCrop(), own.heightOverCrop()))
                .withTilt(either(its.tilt(), own.tilt()));
    }

    private static EnteredQuantity either(EnteredQuantity first, EnteredQuantity second) {
        return first.isBlank() ? second : first;
    }
}
