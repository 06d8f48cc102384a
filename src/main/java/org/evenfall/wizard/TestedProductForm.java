package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;

/** One tested product: what it is, its density, its sizes as a median or as sieve classes, its settings. */
final class TestedProductForm {

    private final Form form;
    private final EntryPath<TestedProductEntry> place;
    private final String at;
    private final Runnable done;

    /** @param done called when the person is through with it */
    TestedProductForm(Form form, EntryPath<List<TestedProductEntry>> library, int index, Runnable done) {
        this.form = form;
        this.place = EntryPath.item(library, index, TestedProductEntry.EMPTY);
        this.at = "/match/library/" + index;
        this.done = done;
    }

    Node node() {
        Node settings = SettingsForm.of(
                form, at + "/settings", place.then(TestedProductEntry::settings, TestedProductEntry::withSettings));
        VBox box = form.group(
                "library.one",
                form.row(
                        form.text(
                                "match.id", at + "/id", place.then(TestedProductEntry::id, TestedProductEntry::withId)),
                        form.text(
                                "match.name",
                                at + "/name",
                                place.then(TestedProductEntry::name, TestedProductEntry::withName)),
                        form.text(
                                "library.source",
                                at + "/source",
                                place.then(TestedProductEntry::source, TestedProductEntry::withSource))),
                form.choice(
                        "product.form",
                        at + "/form",
                        place.then(TestedProductEntry::form, TestedProductEntry::withForm),
                        Choices.answers(ProductForm.class)),
                form.row(
                        form.typed(
                                "match.width",
                                Fields.WORKING_WIDTH,
                                at + "/width",
                                place.then(TestedProductEntry::width, TestedProductEntry::withWidth)),
                        form.typed(
                                "match.densityShort",
                                Fields.BULK_DENSITY,
                                at + "/bulkDensity",
                                place.then(TestedProductEntry::bulkDensity, TestedProductEntry::withBulkDensity)),
                        form.typed(
                                "match.median",
                                Fields.MEDIAN_DIAMETER,
                                at + "/d50",
                                place.then(TestedProductEntry::d50, TestedProductEntry::withD50))),
                form.sentence("library.sieveWhy"),
                form.row(
                        EntryTable.values(
                                        form,
                                        place.then(TestedProductEntry::apertures, TestedProductForm::withApertures),
                                        at + "/apertures",
                                        form.words().text("library.aperture"),
                                        Fields.APERTURE)
                                .node(),
                        new EntryTable<>(
                                        form,
                                        place.then(TestedProductForm::shares, TestedProductEntry::withShares),
                                        EnteredQuantity.EMPTY,
                                        at + "/shares",
                                        false,
                                        List.of(Column.typed(
                                                form.words().text("library.share"),
                                                Fields.SIEVE_SHARE,
                                                "",
                                                share -> share,
                                                (old, share) -> share)))
                                .node()),
                settings,
                form.button("library.done", done));
        box.getStyleClass().add("edited");
        return box;
    }

    /** One share more than apertures; none without apertures. */
    private static List<EnteredQuantity> shares(TestedProductEntry entry) {
        List<EnteredQuantity> shares = new ArrayList<>(entry.shares());
        int wanted = entry.apertures().isEmpty() ? 0 : entry.apertures().size() + 1;
        while (shares.size() < wanted) {
            shares.add(EnteredQuantity.EMPTY);
        }
        return shares;
    }

    private static TestedProductEntry withApertures(TestedProductEntry entry, List<EnteredQuantity> apertures) {
        return entry.withApertures(apertures);
    }
}
