package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SettingsForm;

/** One tested product: what it is, its density, its sizes as a median or as sieve classes, its settings. */
final class TestedProductForm {

    private final Form form;
    private final EntryPath<TestedProductEntry> place;
    private final Runnable done;

    /** @param done called when nothing is left to change */
    TestedProductForm(Form form, int index, Runnable done) {
        this.form = form;
        this.place = MatchPaths.LIBRARY.item(index);
        this.done = done;
    }

    Node node() {
        Node settings = SettingsForm.of(form, MatchPaths.TESTED_SETTINGS.at(place));
        VBox box = form.group(
                "library.one",
                form.row(
                        form.text(MatchPaths.TESTED_ID, place),
                        form.text(MatchPaths.TESTED_NAME, place),
                        form.text(MatchPaths.TESTED_SOURCE, place)),
                form.choiceIn(MatchPaths.TESTED_FORM, place),
                form.row(
                        form.quantity(MatchPaths.TESTED_WIDTH, place),
                        form.quantity(MatchPaths.TESTED_BULK_DENSITY, place),
                        form.quantity(MatchPaths.TESTED_D50, place),
                        form.quantity(MatchPaths.TESTED_NITROGEN, place),
                        form.quantity(MatchPaths.TESTED_TESTED_CV, place)),
                form.sentence("library.sieveWhy"),
                form.row(
                        EntryTable.values(form, MatchPaths.TESTED_APERTURES, place)
                                .node(),
                        EntryTable.values(
                                        form,
                                        MatchPaths.TESTED_SHARES,
                                        MatchPaths.TESTED_SHARES.at(place).as(this::filledUp, (old, shares) -> shares),
                                        false)
                                .node()),
                settings,
                form.button("library.done", done));
        box.getStyleClass().add("edited");
        return box;
    }

    /** One share more than apertures; none without apertures. */
    private List<EnteredQuantity> filledUp(List<EnteredQuantity> typed) {
        List<EnteredQuantity> shares = new ArrayList<>(typed);
        int apertures =
                MatchPaths.TESTED_APERTURES.at(place).get(form.model().setup()).size();
        while (shares.size() < (apertures == 0 ? 0 : apertures + 1)) {
            shares.add(EnteredQuantity.EMPTY);
        }
        return shares;
    }
}
