package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.picture.StartPicture;

/** Step 0: begin, go on or open again; the job and the machine. */
final class StartStep implements StepView {

    private final Form form;
    private final SetupDocument document;
    private final StartPicture picture;

    StartStep(Form form, SetupDocument document) {
        this.form = form;
        this.document = document;
        this.picture = new StartPicture(form.words());
        form.follow(() -> picture.show(form.model().assessment().tramlineWidthM()));
    }

    @Override
    public Step step() {
        return Step.START;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        Double width = form.model().assessment().tramlineWidthM();
        String farm = form.model().setup().start().farm();
        return width == null ? farm : farm + " · " + form.words().number(width, 0, Unit.M);
    }

    @Override
    public Node entries() {
        return new VBox(
                files(),
                changed(),
                form.group(
                        "start.job",
                        form.row(
                                form.text(StartPaths.FARM),
                                form.text(StartPaths.FIELD),
                                form.text(StartPaths.CROP),
                                form.text(StartPaths.SEASON)),
                        form.row(form.quantity(StartPaths.TRAMLINE_WIDTH), form.choice(StartPaths.DRIVING_PATTERN))),
                machine(),
                levers(),
                openings());
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

    private Node machine() {
        return form.group(
                "start.machine",
                form.row(form.text(MachinePaths.NAME), form.text(MachinePaths.HANDBOOK)),
                form.row(
                        form.quantity(MachinePaths.DISC_RADIUS),
                        form.quantity(MachinePaths.DISC_SPEED_AT540),
                        form.quantity(MachinePaths.PTO_LOWEST),
                        form.quantity(MachinePaths.PTO_HIGHEST),
                        form.quantity(MachinePaths.OUTLETS),
                        form.quantity(MachinePaths.WANTED_HEIGHT)),
                EntryTable.values(form, MachinePaths.WORKING_WIDTHS).node());
    }

    private Node levers() {
        return form.group(
                "start.levers",
                form.sentence("start.leversWhy"),
                EntryTable.rows(
                                form,
                                MachinePaths.LEVERS,
                                List.of(
                                        Column.text(form, MachinePaths.LEVER_LABEL, 12),
                                        Column.quantity(form, MachinePaths.LEVER_LOWEST),
                                        Column.quantity(form, MachinePaths.LEVER_HIGHEST),
                                        Column.quantity(form, MachinePaths.LEVER_STEP),
                                        Column.choice(form, MachinePaths.LEVER_WIDER_WHEN)))
                        .node());
    }

    private Node openings() {
        return form.group(
                "start.openings",
                form.row(form.choice(MachinePaths.RATE_SETTING)),
                VisibleWhen.when(
                        form,
                        () -> form.model().setup().machine().rateSetting().byFactor(),
                        form.row(form.choice(MachinePaths.FACTOR_RULE))),
                // a terminal opens the outlets itself
                VisibleWhen.when(
                        form,
                        () -> !form.model().setup().machine().rateSetting().byFactor(),
                        new VBox(
                                form.row(
                                        form.choice(MachinePaths.FLOW_TABLE_BASIS),
                                        form.quantity(MachinePaths.FLOW_TABLE_DENSITY)),
                                EntryTable.rows(
                                                form,
                                                MachinePaths.OPENINGS,
                                                List.of(
                                                        Column.quantity(form, MachinePaths.OPENING_OPENING),
                                                        Column.quantity(form, MachinePaths.OPENING_FLOW)))
                                        .node())));
    }
}
