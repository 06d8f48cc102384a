package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Slot;

/** Entries for how the machine stands: each lever by its owner's label, shaft speed, height, tilt. */
final class SettingsForm {

    private SettingsForm() {}

    /** The entries, made anew whenever the machine has other levers. */
    static Node of(Form form, String pointer, EntryPath<SettingsEntries> place) {
        return Slot.rebuiltOn(
                form,
                () -> form.model().assessment().machine().levers().stream()
                        .map(Lever::label)
                        .toList(),
                part -> node(part, pointer, place));
    }

    private static Node node(Form form, String pointer, EntryPath<SettingsEntries> place) {
        List<Node> entries = new ArrayList<>();
        for (Lever lever : form.model().assessment().machine().levers()) {
            String label = lever.label();
            String at = pointer + "/levers/" + label.replace("~", "~0").replace("/", "~1");
            entries.add(form.typedNamed(label, Fields.LEVER_VALUE, at, lever(place, label)));
        }
        entries.add(form.typed(
                "field.ptoSpeed",
                Fields.PTO_SPEED,
                pointer + "/ptoSpeed",
                place.then(SettingsEntries::ptoSpeed, SettingsEntries::withPtoSpeed)));
        entries.add(form.typed(
                "field.heightOverCrop",
                Fields.HEIGHT_OVER_CROP,
                pointer + "/heightOverCrop",
                place.then(SettingsEntries::heightOverCrop, SettingsEntries::withHeightOverCrop)));
        entries.add(form.typed(
                "field.tilt",
                Fields.TILT,
                pointer + "/tilt",
                place.then(SettingsEntries::tilt, SettingsEntries::withTilt)));
        return form.row(entries.toArray(new Node[0]));
    }

    private static EntryPath<EnteredQuantity> lever(EntryPath<SettingsEntries> place, String label) {
        return place.then(
                settings -> settings.levers().getOrDefault(label, EnteredQuantity.EMPTY), (settings, value) -> {
                    Map<String, EnteredQuantity> levers = new LinkedHashMap<>(settings.levers());
                    levers.put(label, value);
                    return settings.withLevers(levers);
                });
    }
}
