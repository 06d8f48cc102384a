package org.evenfall.wizard;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.KeptProducts;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.store.InputFileException;
import org.evenfall.store.LibraryCsv;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.HorizontalScrollPane;
import org.evenfall.wizard.form.Keyboard;
import org.evenfall.wizard.form.Slot;

/** The library of tested products: search, sort, add, edit, delete with undo, import, keep the product just proved. */
final class LibraryForm {

    /** So many entries are listed at once; the search finds the rest. */
    static final int LISTED = 40;

    private static final EntryPath<List<TestedProductEntry>> LIBRARY = MatchPaths.LIBRARY.path();

    private final Form form;
    private final SetupDocument document;
    private final TextField search = new TextField();
    private final ChoiceBox<LibraryOrder> order = new ChoiceBox<>();
    private final GridPane list = new GridPane();
    private final Slot editor;
    private final HBox deleted = new HBox();
    private int edited = -1;
    private int listed;
    private List<Object> shown = List.of();

    LibraryForm(Form form, SetupDocument document) {
        this.form = form;
        this.document = document;
        this.editor = new Slot(form);
    }

    Node node() {
        search.setId("library.search");
        search.setAccessibleText(form.words().text("library.search"));
        search.setPromptText(form.words().text("library.search"));
        search.setPrefColumnCount(24);
        search.setMinWidth(Region.USE_PREF_SIZE);
        order.setMinWidth(Region.USE_PREF_SIZE);
        search.textProperty().addListener((property, old, text) -> refresh());
        order.setId("library.order");
        order.getItems().setAll(LibraryOrder.values());
        order.setConverter(Choices.converter(form.words()::choice));
        order.setAccessibleText(form.words().text("library.order"));
        order.setValue(LibraryOrder.AS_ENTERED);
        order.valueProperty().addListener((property, old, how) -> refresh());
        list.setId(LIBRARY.pointer());
        list.getStyleClass().add("rows");
        deleted.getStyleClass().add("closer");
        Button keep = form.button("library.keep", this::keep);
        form.follow(() -> keep.setDisable(kept().isEmpty()));
        form.follow(this::refresh);
        return form.group(
                "match.library",
                form.sentence("match.libraryWhy"),
                form.row(form.button("library.add", this::add), form.button("match.import", this::chooseTable), keep),
                form.row(search, new Label(form.words().text("library.order")), order),
                form.findings(LIBRARY.pointer()),
                new HorizontalScrollPane(list),
                deleted,
                editor);
    }

    private List<TestedProductEntry> library() {
        return LIBRARY.get(form.model().setup());
    }

    /** The list is only made anew when what it shows has changed. */
    private void refresh() {
        List<TestedProductEntry> library = library();
        List<Object> now = List.of(library, search.getText(), order.getValue());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        if (edited >= 0 && library.size() != listed) {
            // places have shifted: what is open for change may now be another one
            edit(-1);
        }
        listed = library.size();
        List<Integer> places = order.getValue()
                .places(
                        form.model().assessment().read(),
                        search.getText(),
                        entry -> form.words().choice(entry.form()));
        list.getChildren().clear();
        for (int row = 0; row < Math.min(LISTED, places.size()); row++) {
            line(row, places.get(row), library.get(places.get(row)));
        }
        String sentence = library.isEmpty()
                ? form.words().text("library.empty")
                : places.isEmpty()
                        ? form.words().text("library.none")
                        : places.size() > LISTED
                                ? form.words().text("library.more", Arg.count(places.size() - LISTED))
                                : "";
        if (!sentence.isEmpty()) {
            Label label = new Label(sentence);
            label.setWrapText(true);
            list.add(label, 0, LISTED, 5, 1);
        }
    }

    private void line(int row, int place, TestedProductEntry entry) {
        Label name = new Label(entry.name().isBlank() ? form.words().text("library.unnamed") : entry.name());
        Label source = new Label(entry.source());
        source.getStyleClass().add("beneath");
        Button edit = form.button("library.edit", () -> edit(place));
        edit.setId("library.edit/" + place);
        Button delete = form.button("library.delete", () -> delete(place, entry));
        delete.setId("library.delete/" + place);
        for (Button button : List.of(edit, delete)) {
            button.setAccessibleText(button.getText() + ": " + name.getText());
        }
        list.addRow(
                row,
                entry.source().isBlank() ? name : new VBox(name, source),
                figure(entry.width()),
                figure(entry.bulkDensity()),
                edit,
                delete);
    }

    private static Label figure(EnteredQuantity typed) {
        Label label = new Label(typed.isBlank() ? "–" : typed.toString());
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private void add() {
        int place = library().size();
        search.clear();
        form.model()
                .change(setup ->
                        LIBRARY.set(setup, KeptProducts.join(LIBRARY.get(setup), List.of(TestedProductEntry.EMPTY))));
        edit(Math.min(place, library().size() - 1));
    }

    private void edit(int place) {
        edited = place;
        editor.clear();
        if (place >= 0) {
            editor.show(part -> new TestedProductForm(part, place, () -> edit(-1)).node());
            String name =
                    MatchPaths.TESTED_NAME.at(MatchPaths.LIBRARY.item(place)).pointer();
            editor.lookupAll("#" + name).forEach(Keyboard::to);
        }
    }

    private void delete(int place, TestedProductEntry entry) {
        edit(-1);
        Setup before = form.model().setup();
        form.model().change(setup -> {
            List<TestedProductEntry> rest = new ArrayList<>(LIBRARY.get(setup));
            rest.remove(place);
            return LIBRARY.set(setup, rest);
        });
        Setup after = form.model().setup();
        Label sentence = new Label(form.words().text("library.deleted", Arg.text(entry.name())));
        Button undo = form.button("library.undo", () -> {
            // only this deletion comes back, whatever was typed since
            form.model().change(setup -> Objects.equals(setup, after) ? before : back(setup, place, entry));
            deleted.getChildren().clear();
        });
        deleted.getChildren().setAll(sentence, undo);
        Keyboard.to(undo);
    }

    private static Setup back(Setup setup, int place, TestedProductEntry entry) {
        List<TestedProductEntry> all = new ArrayList<>(LIBRARY.get(setup));
        all.add(Math.min(place, all.size()), entry);
        return LIBRARY.set(setup, all);
    }

    private Optional<TestedProductEntry> kept() {
        return KeptProducts.of(form.model().setup(), form.model().assessment());
    }

    private void keep() {
        kept().ifPresent(entry -> {
            form.model().change(setup -> LIBRARY.set(setup, KeptProducts.join(LIBRARY.get(setup), List.of(entry))));
            document.frame().showNotice(form.words().text("library.keptNow", Arg.text(entry.name())));
        });
    }

    private void chooseTable() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(form.words().text("match.import"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("CSV", "*.csv"));
        File file = chooser.showOpenDialog(list.getScene().getWindow());
        if (file != null) {
            take(file.toPath());
        }
    }

    /** Adds the products of a table; a bad line refuses it whole and says where. */
    void take(Path file) {
        try {
            List<TestedProductEntry> more = LibraryCsv.read(Files.readString(file), String.valueOf(file.getFileName()));
            form.model().change(setup -> LIBRARY.set(setup, KeptProducts.join(LIBRARY.get(setup), more)));
            document.frame().showNotice(form.words().text("match.imported", Arg.count(more.size())));
        } catch (InputFileException | IOException problem) {
            document.frame()
                    .showNotice(
                            form.words().text("document.unreadable", Arg.text(String.valueOf(problem.getMessage()))));
        }
    }
}
