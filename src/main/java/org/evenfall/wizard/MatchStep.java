package org.evenfall.wizard;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedReference;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.ReferenceEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.store.LibraryCsv;
import org.evenfall.store.SetupFileException;
import org.evenfall.wizard.picture.MatchPicture;
import org.jspecify.annotations.Nullable;

/** Step 2: the closest tested product and the settings to start from. */
final class MatchStep implements StepView {

    private final Form form;
    private final Desk desk;
    private final MatchPicture picture;

    MatchStep(Form form, Desk desk) {
        this.form = form;
        this.desk = desk;
        this.picture = new MatchPicture(form.words());
        form.follow(() -> picture.show(
                form.model().assessment().match(),
                form.model().assessment().product(),
                form.model().setup().product().name()));
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
        VBox ranked = new VBox();
        ranked.getStyleClass().add("ranked");
        form.follow(() -> ranked.getChildren().setAll(ranked()));
        VBox settings = new VBox();
        SettingsForm.follow(
                form,
                settings,
                "/match/settings",
                Places.MATCH.then(MatchEntries::settings, MatchEntries::withSettings));
        return new VBox(
                form.group("match.ranked", ranked, form.sentence("match.model")),
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

    private Node ranked() {
        MatchResult match = form.model().assessment().match();
        if (match == null || match.ranked().isEmpty()) {
            Label none = new Label(form.words().text(match == null ? "missing.productFirst" : "missing.noReference"));
            none.setWrapText(true);
            return none;
        }
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        String[] headers = {
            "match.name", "match.width", "match.density", "match.size", "match.throw", "match.flow", "match.verdict"
        };
        for (int c = 0; c < headers.length; c++) {
            Label header = new Label(form.words().text(headers[c]));
            header.getStyleClass().add("column-header");
            grid.add(header, c, 0);
        }
        ToggleGroup group = new ToggleGroup();
        for (int r = 0; r < match.ranked().size(); r++) {
            RankedReference reference = match.ranked().get(r);
            RadioButton choose = new RadioButton(reference.name());
            choose.setId("choose-" + reference.id());
            choose.setToggleGroup(group);
            choose.setSelected(
                    reference.id().equals(form.model().setup().match().chosen()));
            choose.setOnAction(event -> form.model().change(setup -> chosen(setup, reference.id())));
            grid.add(choose, 0, r + 1);
            grid.add(new Label(form.words().number(reference.widthM(), 0, Unit.M)), 1, r + 1);
            grid.add(signed(reference.densityDifferencePercent(), 0, Unit.PERCENT), 2, r + 1);
            grid.add(signed(reference.d50DifferencePercent(), 0, Unit.PERCENT), 3, r + 1);
            grid.add(signed(reference.throwDifferenceM(), 1, Unit.M), 4, r + 1);
            grid.add(signed(reference.flowDifferencePercent(), 0, Unit.PERCENT), 5, r + 1);
            Label verdict = new Label(form.words().choice(reference.verdict()));
            verdict.setWrapText(true);
            grid.add(verdict, 6, r + 1);
        }
        return new Sideways(grid);
    }

    private Label signed(@Nullable Double value, int decimals, Unit unit) {
        if (value == null) {
            return new Label("–");
        }
        String digits = form.words().number(value, decimals, unit);
        boolean nothing = digits.chars().noneMatch(sign -> sign >= '1' && sign <= '9');
        return new Label(value > 0 && !nothing ? "+" + digits : digits);
    }

    /** Choosing a reference takes over its settings where none were typed yet. */
    private static Setup chosen(Setup setup, String id) {
        MatchEntries match = setup.match().withChosen(id);
        if (match.settings().levers().isEmpty()) {
            for (ReferenceEntry entry : match.library()) {
                if (entry.id().equals(id)) {
                    match = match.withSettings(entry.settings());
                }
            }
        }
        return setup.withMatch(match);
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
