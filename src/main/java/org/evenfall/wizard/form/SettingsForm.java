package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.SettingsPaths;

/** The settings of the machine: each lever by its owner's label, PTO speed, height, tilt. */
public final class SettingsForm {

    private SettingsForm() {}

    /** The entries, made anew whenever the machine has other levers. */
    public static Node of(Form form, EntryPath<SettingsEntries> place) {
        return Slot.rebuiltOn(form, () -> labels(form), part -> node(part, place));
    }

    private static Node node(Form form, EntryPath<SettingsEntries> place) {
        List<Node> entries = leversAndPtoOf(form, place);
        entries.add(form.quantity(SettingsPaths.HEIGHT_OVER_CROP, place));
        entries.add(form.quantity(SettingsPaths.TILT, place));
        return form.row(entries.toArray(new Node[0]));
    }

    private static List<String> labels(Form form) {
        return form.model().assessment().machine().levers().stream()
                .map(Lever::label)
                .toList();
    }

    private static List<Node> leversAndPtoOf(Form form, EntryPath<SettingsEntries> place) {
        List<Node> entries = new ArrayList<>();
        for (Lever lever : form.model().assessment().machine().levers()) {
            EntryPath<EnteredQuantity> value = QuantityMap.item(SettingsPaths.LEVERS.at(place), lever.label());
            entries.add(form.quantity(lever.label(), SettingsPaths.LEVERS, value));
        }
        entries.add(form.quantity(SettingsPaths.PTO_SPEED, place));
        return entries;
    }
}
