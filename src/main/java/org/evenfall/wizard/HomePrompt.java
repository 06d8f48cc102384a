package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.evenfall.setup.Revisions;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Begin, go on, or open again. */
final class HomePrompt implements Prompt {

    private final Form form;
    private final Node picture;
    private final SetupDocument document;
    private final RecentSetups recent;
    private final VBox tiles = new VBox();

    HomePrompt(Form form, Node picture, SetupDocument document, RecentSetups recent) {
        this.recent = recent;
        this.form = form;
        this.picture = picture;
        this.document = document;
    }

    @Override
    public String id() {
        return "0a";
    }

    @Override
    public Node entries() {
        tiles.getStyleClass().add("tiles");
        return new VBox(tiles, files(), changed());
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public boolean alone() {
        return true;
    }

    @Override
    public void shown() {
        tiles.getChildren().setAll(recent.tiles().stream().map(this::tile).toList());
    }

    private Node tile(RecentSetups.Tile tile) {
        Label name = new Label(tile.name());
        name.getStyleClass().add("tile-name");
        Label state = new Label(tile.state());
        state.getStyleClass().add("beneath");
        Button open = new Button();
        open.setGraphic(new VBox(name, state));
        open.setAccessibleText(tile.name() + ", " + tile.state());
        open.setMaxWidth(Double.MAX_VALUE);
        open.getStyleClass().add("tile");
        open.setOnAction(event -> document.open(tile.file()));
        return open;
    }

    private Node files() {
        FlowPane buttons = form.row(
                form.button("start.new", document::createNew),
                recent("start.goOn", document::open),
                recent("start.again", document::reopen),
                form.button("start.demo", document::demo),
                recent("start.borrowMachine", document::borrowMachine),
                recent("start.borrowProduct", document::borrowProduct),
                recent("start.borrowRate", document::borrowRate));
        return form.group("start.begin", buttons, form.sentence("start.saves"));
    }

    /** Coming back: what changed opens again exactly what it makes void. Shown from the second revision on. */
    private Node changed() {
        FlowPane buttons = form.row(Arrays.stream(Revisions.Change.values())
                .map(change -> form.button(
                        "start.changed." + change.name(),
                        () -> form.model()
                                .change(setup -> Revisions.reopen(
                                        setup, form.model().assessment(), Set.of(change), form::numberText))))
                .toArray(Node[]::new));
        VBox group = form.group("start.changed", form.sentence("start.changedWhy"), buttons);
        form.follow(() -> {
            boolean again = form.model().setup().card().revision() > 1;
            group.setVisible(again);
            group.setManaged(again);
        });
        return group;
    }

    private MenuButton recent(String key, Consumer<Path> chosen) {
        MenuButton menu = new MenuButton(form.words().text(key));
        menu.setId(key);
        menu.setOnShowing(event -> menu.getItems().setAll(items(chosen)));
        menu.getItems().setAll(items(chosen));
        return menu;
    }

    private List<MenuItem> items(Consumer<Path> chosen) {
        List<Path> files = document.recent();
        if (files.isEmpty()) {
            MenuItem none = new MenuItem(form.words().text("start.none"));
            none.setDisable(true);
            return List.of(none);
        }
        return files.stream()
                .map(file -> {
                    MenuItem item = new MenuItem(document.name(file));
                    item.setMnemonicParsing(false);
                    item.setOnAction(event -> chosen.accept(file));
                    return item;
                })
                .toList();
    }
}
