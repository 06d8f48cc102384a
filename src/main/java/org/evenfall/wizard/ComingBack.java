package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.VBox;
import org.evenfall.wizard.form.Form;

/** The ways back to a setup of before: check it again, the rate alone, log a pass, the next season, the record. */
final class ComingBack {

    private final Form form;
    private final SetupDocument document;
    private final RecordWriter records;

    ComingBack(Form form, SetupDocument document, RecordWriter records) {
        this.form = form;
        this.document = document;
        this.records = records;
    }

    /** The group of them for Home. */
    VBox group() {
        return form.group(
                "home.comingBack",
                form.row(
                        setups("start.rateAgain", file -> document.rateAgain(file, form::numberText)),
                        setups("start.again", document::reopen),
                        setups("start.logPass", document::logPass),
                        setups("start.nextSeason", document::nextSeason),
                        seasons()));
    }

    /** A menu of all setups. */
    Node setups(String key, Consumer<Path> chosen) {
        return menu(key, document::recent, document::name, chosen);
    }

    private Node seasons() {
        return menu(
                "start.record",
                document::seasons,
                folder -> String.valueOf(folder.getFileName()),
                folder -> records.write(Integer.parseInt(String.valueOf(folder.getFileName()))));
    }

    private MenuButton menu(String key, Files files, Name name, Consumer<Path> chosen) {
        MenuButton menu = new MenuButton(form.words().text(key));
        menu.setId(key);
        // the setups are read when the menu opens; without an entry it would not open
        menu.setOnShowing(event -> menu.getItems().setAll(items(files.all(), name, chosen)));
        menu.getItems().setAll(none());
        return menu;
    }

    private MenuItem none() {
        MenuItem none = new MenuItem(form.words().text("start.none"));
        none.setDisable(true);
        return none;
    }

    private List<MenuItem> items(List<Path> files, Name name, Consumer<Path> chosen) {
        if (files.isEmpty()) {
            return List.of(none());
        }
        return files.stream()
                .map(file -> {
                    MenuItem item = new MenuItem(name.of(file));
                    item.setMnemonicParsing(false);
                    item.setOnAction(event -> chosen.accept(file));
                    return item;
                })
                .toList();
    }

    /** What a menu lists. */
    @FunctionalInterface
    private interface Files {
        List<Path> all();
    }

    /** What a file is called in a menu. */
    @FunctionalInterface
    private interface Name {
        String of(Path file);
    }
}
