package org.evenfall.wizard;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.reference.LaidOver;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.ReferenceEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.LibraryCsv;
import org.evenfall.store.SetupFileException;
import org.evenfall.wizard.picture.MatchPicture;
import org.evenfall.wizard.picture.PatternPicture;
import org.evenfall.wizard.picture.PictureStack;

/** Step 2: the closest tested product and the settings to start from. */
final class MatchStep implements StepView {

    private final Form form;
    private final Desk desk;
    private final MatchPicture match;
    private final PatternPicture pattern;
    private final PictureStack picture;

    MatchStep(Form form, Desk desk) {
        this.form = form;
        this.desk = desk;
        this.match = new MatchPicture(form.words());
        this.pattern = new PatternPicture(form.words());
        this.picture = new PictureStack(match, pattern);
        form.follow(() -> {
            match.show(
                    form.model().assessment().match(),
                    form.model().assessment().product(),
                    form.model().setup().product().name());
            pattern.show(laidOver(), form.model().assessment().tramlineWidthM());
        });
    }

    /** The landing patterns of the product and of what it is compared with, both with the same settings. */
    private List<PatternPicture.Pattern> laidOver() {
        MatchResult result = form.model().assessment().match();
        LaidOver laid = result == null ? null : result.laidOver();
        if (laid == null) {
            return List.of();
        }
        String name = form.model().setup().product().name();
        return List.of(
                new PatternPicture.Pattern(
                        name.isBlank() ? form.words().text("picture.match.product") : name,
                        laid.positionsM(),
                        laid.productPerM()),
                new PatternPicture.Pattern(
                        laid.otherName().isBlank() ? form.words().text("picture.pattern.dense") : laid.otherName(),
                        laid.positionsM(),
                        laid.otherPerM()));
    }

    @Override
    public Step step() {
        return Step.MATCH;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        MatchResult match = form.model().assessment().match();
        return match == null ? "" : form.words().choice(match.verdict());
    }

    @Override
    public Node entries() {
        VBox settings = new VBox();
        SettingsForm.follow(
                form,
                settings,
                "/match/settings",
                Places.MATCH.then(MatchEntries::settings, MatchEntries::withSettings));
        return new VBox(
                new RankedForm(form).node(),
                form.group(
                        "match.without",
                        form.row(
                                form.choice(
                                        "match.startWithout",
                                        "/match/startWithoutReference",
                                        Places.MATCH.then(
                                                MatchEntries::startWithoutReference,
                                                MatchEntries::withStartWithoutReference),
                                        Form.answers(YesNo.class)),
                                form.choice(
                                        "match.trayTestOnly",
                                        "/match/trayTestOnly",
                                        Places.MATCH.then(MatchEntries::trayTestOnly, MatchEntries::withTrayTestOnly),
                                        Form.answers(YesNo.class)))),
                form.group("match.settings", form.sentence("match.settingsWhy"), settings),
                library());
    }

    private Node library() {
        Lens<List<ReferenceEntry>> list = Places.MATCH.then(MatchEntries::library, MatchEntries::withLibrary);
        return form.group(
                "match.library",
                form.sentence("match.libraryWhy"),
                form.row(form.button("match.import", this::chooseTable)),
                new Rows<>(
                                form,
                                list,
                                ReferenceEntry.EMPTY,
                                "/match/library",
                                true,
                                List.of(
                                        Rows.text(
                                                form,
                                                form.words().text("match.id"),
                                                "id",
                                                6,
                                                ReferenceEntry::id,
                                                ReferenceEntry::withId),
                                        Rows.text(
                                                form,
                                                form.words().text("match.name"),
                                                "name",
                                                14,
                                                ReferenceEntry::name,
                                                ReferenceEntry::withName),
                                        Rows.choice(
                                                form,
                                                form.words().text("product.form"),
                                                ProductForm.class,
                                                ReferenceEntry::form,
                                                ReferenceEntry::withForm),
                                        Rows.typed(
                                                form,
                                                form.words().text("match.width"),
                                                Fields.WORKING_WIDTH,
                                                "width",
                                                ReferenceEntry::width,
                                                ReferenceEntry::withWidth),
                                        Rows.typed(
                                                form,
                                                form.words().text("match.densityShort"),
                                                Fields.BULK_DENSITY,
                                                "bulkDensity",
                                                ReferenceEntry::bulkDensity,
                                                ReferenceEntry::withBulkDensity),
                                        Rows.typed(
                                                form,
                                                form.words().text("match.median"),
                                                Fields.MEDIAN_DIAMETER,
                                                "d50",
                                                ReferenceEntry::d50,
                                                ReferenceEntry::withD50)))
                        .node());
    }

    private void chooseTable() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(form.words().text("match.import"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("CSV", "*.csv"));
        File file = chooser.showOpenDialog(picture.getScene().getWindow());
        if (file != null) {
            take(file.toPath());
        }
    }

    /** Adds the products of a table; a bad line refuses it whole and says where. */
    void take(Path file) {
        try {
            List<ReferenceEntry> more = LibraryCsv.read(Files.readString(file), String.valueOf(file.getFileName()));
            form.model().change(setup -> {
                List<ReferenceEntry> all = new ArrayList<>(setup.match().library());
                List<String> known = all.stream().map(ReferenceEntry::id).toList();
                more.stream().filter(entry -> !known.contains(entry.id())).forEach(all::add);
                return setup.withMatch(setup.match().withLibrary(all));
            });
            desk.tell(form.words().text("match.imported", Arg.count(more.size())));
        } catch (SetupFileException | IOException problem) {
            desk.tell(form.words().text("desk.unreadable", Arg.text(String.valueOf(problem.getMessage()))));
        }
    }
}
