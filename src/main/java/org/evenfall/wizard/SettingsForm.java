package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.SettingsEntries;

/** Entries for how the machine stands: each lever by its owner's label, shaft speed, height, tilt. */
final class SettingsForm {

    private SettingsForm() {}

    /** Fills a box and fills it anew whenever the machine has other levers. */
    static void follow(Form form, VBox box, String pointer, EntryPath<SettingsEntries> place) {
        List<List<String>> shown = new ArrayList<>();
        form.follow(() -> {
            List<String> labels = form.model().assessment().machine().levers().stream()
                    .map(Lever::label)
                    .toList();
            if (shown.isEmpty() || !shown.get(0).equals(labels)) {
                shown.clear();
                shown.add(labels);
                box.getChildren().setAll(node(form, labels, pointer, place));
            }
        });
    }

    private static Node node(Form form, List<String> labels, String pointer, EntryPath<SettingsEntries> place) {
        List<Node> entries = new ArrayList<>();
        for (String label : labels) {
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
