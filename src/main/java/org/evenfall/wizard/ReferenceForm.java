package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.Typed;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.ReferenceEntry;

/** One tested product: what it is, its density, its sizes as a median or as sieve classes, its settings. */
final class ReferenceForm {

    private final Form form;
    private final Lens<ReferenceEntry> place;
    private final String at;
    private final Runnable done;

    /** @param done called when the person is through with it */
    ReferenceForm(Form form, Lens<List<ReferenceEntry>> library, int index, Runnable done) {
        this.form = form;
        this.place = Lens.item(library, index, ReferenceEntry.EMPTY);
        this.at = "/match/library/" + index;
        this.done = done;
    }

    Node node() {
        VBox settings = new VBox();
        SettingsForm.follow(
                form, settings, at + "/settings", place.then(ReferenceEntry::settings, ReferenceEntry::withSettings));
        VBox box = form.group(
                "library.one",
                form.row(
                        form.text("match.id", at + "/id", place.then(ReferenceEntry::id, ReferenceEntry::withId)),
                        form.text(
                                "match.name", at + "/name", place.then(ReferenceEntry::name, ReferenceEntry::withName)),
                        form.text(
                                "library.source",
                                at + "/source",
                                place.then(ReferenceEntry::source, ReferenceEntry::withSource))),
                form.choice(
                        "product.form",
                        at + "/form",
                        place.then(ReferenceEntry::form, ReferenceEntry::withForm),
                        Form.answers(ProductForm.class)),
                form.row(
                        form.typed(
                                "match.width",
                                Fields.WORKING_WIDTH,
                                at + "/width",
                                place.then(ReferenceEntry::width, ReferenceEntry::withWidth)),
                        form.typed(
                                "match.densityShort",
                                Fields.BULK_DENSITY,
                                at + "/bulkDensity",
                                place.then(ReferenceEntry::bulkDensity, ReferenceEntry::withBulkDensity)),
                        form.typed(
                                "match.median",
                                Fields.MEDIAN_DIAMETER,
                                at + "/d50",
                                place.then(ReferenceEntry::d50, ReferenceEntry::withD50))),
                form.sentence("library.sieveWhy"),
                form.row(
                        Rows.values(
                                        form,
                                        place.then(ReferenceEntry::apertures, ReferenceForm::withApertures),
                                        at + "/apertures",
                                        form.words().text("library.aperture"),
                                        Fields.APERTURE)
                                .node(),
                        new Rows<>(
                                        form,
                                        place.then(ReferenceForm::shares, ReferenceEntry::withShares),
                                        Typed.EMPTY,
                                        at + "/shares",
                                        false,
                                        List.of(Rows.typed(
                                                form,
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
    private static List<Typed> shares(ReferenceEntry entry) {
        List<Typed> shares = new ArrayList<>(entry.shares());
        int wanted = entry.apertures().isEmpty() ? 0 : entry.apertures().size() + 1;
        while (shares.size() < wanted) {
            shares.add(Typed.EMPTY);
        }
        return shares;
    }

    private static ReferenceEntry withApertures(ReferenceEntry entry, List<Typed> apertures) {
        return entry.withApertures(apertures);
    }
}
