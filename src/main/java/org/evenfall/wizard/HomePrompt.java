package org.evenfall.wizard;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.entry.UnitSystem;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.Wrapped;

/** Begin, go on, or open again. */
final class HomePrompt implements Prompt {

    private final Form form;
    /** There is none: the page takes the whole window. */
    private final Node picture = new Region();

    private final SetupDocument document;
    private final RecentSetups recent;
    private final FlowPane tiles = new FlowPane();
    private final VBox box = new VBox();
    private final Node begin;
    private final Node units;
    private final FarmLists lists;
    private final FarmProblems problems;
    private final ComingBack back;

    HomePrompt(Form form, SetupDocument document, RecentSetups recent, RecordWriter records) {
        this.back = new ComingBack(form, document, records);
        this.recent = recent;
        this.form = form;
        this.document = document;
        this.lists = new FarmLists(form.words(), document);
        this.problems = new FarmProblems(form.words(), document);
        this.begin = begin();
        this.units = form.choice(StartPaths.UNITS);
    }

    @Override
    public String id() {
        return "0a";
    }

    @Override
    public Node entries() {
        tiles.getStyleClass().add("tiles");
        box.getChildren()
                .setAll(units, begin, tiles, problems, changed(), back.group(), lists, form.sentence("start.saves"));
        return box;
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
        document.machines().keep();
        tiles.getChildren().setAll(recent.tiles().stream().map(this::tile).toList());
        // the keyboard begins at the setup changed last, or at a new one
        boolean any = !tiles.getChildren().isEmpty();
        tiles.getChildren().add(demo());
        box.getChildren().removeAll(begin, tiles, units);
        box.getChildren().addAll(0, any ? List.of(tiles, begin) : List.of(begin, tiles));
        // asked the first time, above all else; afterwards at the end
        box.getChildren()
                .add(
                        document.units() == UnitSystem.UNANSWERED
                                ? 0
                                : box.getChildren().size(),
                        units);
        lists.refresh();
        problems.refresh();
    }

    private Node tile(RecentSetups.Tile tile) {
        HBox last = new HBox();
        Button open = tile(tile.title(), tile.about(), tile.changed(), last);
        open.setOnAction(event -> document.open(tile.file()));
        // until it is known the line keeps its room
        show(open, last, PromptState.OPEN, "");
        recent.next(tile, next -> show(open, last, next.state(), next.text()));
        return open;
    }

    private Node demo() {
        HBox last = new HBox();
        Button open = tile(
                form.words().text("start.demo"),
                form.words().text("home.demo"),
                form.words().text("home.demoCopy"),
                last);
        show(open, last, PromptState.OPEN, form.words().text("home.demoLook"));
        open.setId("start.demo");
        open.setOnAction(event -> document.demo());
        return open;
    }

    private static Button tile(String title, String about, String changed, HBox last) {
        last.getStyleClass().add("tile-state");
        Button open = new Button();
        open.setGraphic(new VBox(
                Wrapped.label(title, "tile-name"),
                Wrapped.label(about, "tile-about"),
                Wrapped.label(changed, "beneath"),
                last));
        open.setAccessibleHelp(String.join(", ", title, about, changed));
        open.getStyleClass().add("tile");
        return open;
    }

    /** How far the setup of a tile has come. */
    private static void show(Button open, HBox last, PromptState state, String next) {
        last.getChildren().setAll(StateMark.of(state), Wrapped.label(next, "tile-next"));
        open.setAccessibleText(next.isEmpty() ? open.getAccessibleHelp() : open.getAccessibleHelp() + ", " + next);
    }

    private Node begin() {
        Button first = form.button("start.new", document::createNew);
        first.getStyleClass().add("primary");
        return form.row(
                first,
                back.setups("start.borrowProduct", document::borrowProduct),
                back.setups("start.borrowRate", document::borrowRate),
                form.button("day.title", () -> document.frame().showDay()));
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
}
