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
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Fields;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.entry.FlowTableBasis;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.OpeningEntry;
import org.evenfall.setup.entry.StartEntries;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.StartPicture;

/** Step 0: begin, go on or look again; the job and the machine. */
final class StartStep implements StepView {

    private static final LeverEntry NO_LEVER = LeverEntry.EMPTY;
    private static final OpeningEntry NO_OPENING = OpeningEntry.EMPTY;

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
                                form.text(
                                        "start.farm",
                                        "/start/farm",
                                        Places.START.then(StartEntries::farm, StartEntries::withFarm)),
                                form.text(
                                        "start.field",
                                        "/start/field",
                                        Places.START.then(StartEntries::field, StartEntries::withField)),
                                form.text(
                                        "start.crop",
                                        "/start/crop",
                                        Places.START.then(StartEntries::crop, StartEntries::withCrop)),
                                form.text(
                                        "start.season",
                                        "/start/season",
                                        Places.START.then(StartEntries::season, StartEntries::withSeason))),
                        form.row(
                                form.typed(
                                        "field.tramlineWidth",
                                        Fields.TRAMLINE_WIDTH,
                                        "/start/tramlineWidth",
                                        Places.START.then(
                                                StartEntries::tramlineWidth, StartEntries::withTramlineWidth)),
                                form.choice(
                                        "start.driving",
                                        "/start/drivingPattern",
                                        Places.START.then(
                                                StartEntries::drivingPattern, StartEntries::withDrivingPattern),
                                        Choices.answers(DrivingPattern.class)))),
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

    /** Coming back: what changed re-opens exactly what it makes worthless. Shown from the second revision on. */
    private Node changed() {
        FlowPane buttons = form.row(Arrays.stream(Revisions.Change.values())
                .map(change -> form.button(
                        "start.changed." + change.name(),
                        () -> form.model().change(setup -> Revisions.reopen(setup, Set.of(change)))))
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
        EntryPath<MachineEntries> machine = Places.MACHINE;
        return form.group(
                "start.machine",
                form.row(
                        form.text(
                                "start.machineName",
                                "/machine/name",
                                machine.then(MachineEntries::name, MachineEntries::withName)),
                        form.text(
                                "start.handbook",
                                "/machine/handbook",
                                machine.then(MachineEntries::handbook, MachineEntries::withHandbook))),
                form.row(
                        form.typed(
                                "field.discRadius",
                                Fields.DISC_RADIUS,
                                "/machine/discRadius",
                                machine.then(MachineEntries::discRadius, MachineEntries::withDiscRadius)),
                        form.typed(
                                "field.discSpeed",
                                Fields.DISC_SPEED,
                                "/machine/discSpeedAt540",
                                machine.then(MachineEntries::discSpeedAt540, MachineEntries::withDiscSpeedAt540)),
                        form.typed(
                                "start.ptoLowest",
                                Fields.PTO_LIMIT,
                                "/machine/ptoLowest",
                                machine.then(MachineEntries::ptoLowest, MachineEntries::withPtoLowest)),
                        form.typed(
                                "start.ptoHighest",
                                Fields.PTO_LIMIT,
                                "/machine/ptoHighest",
                                machine.then(MachineEntries::ptoHighest, MachineEntries::withPtoHighest)),
                        form.typed(
                                "field.outlets",
                                Fields.OUTLETS,
                                "/machine/outlets",
                                machine.then(MachineEntries::outlets, MachineEntries::withOutlets)),
                        form.typed(
                                "start.handbookHeight",
                                Fields.HEIGHT_OVER_CROP,
                                "/machine/wantedHeight",
                                machine.then(MachineEntries::wantedHeight, MachineEntries::withWantedHeight))),
                EntryTable.values(
                                form,
                                machine.then(MachineEntries::workingWidths, MachineEntries::withWorkingWidths),
                                "/machine/workingWidths",
                                form.words().text("field.workingWidth"),
                                Fields.WORKING_WIDTH)
                        .node());
    }

    private Node levers() {
        return form.group(
                "start.levers",
                form.sentence("start.leversWhy"),
                new EntryTable<>(
                                form,
                                Places.MACHINE.then(MachineEntries::levers, MachineEntries::withLevers),
                                NO_LEVER,
                                "/machine/levers",
                                true,
                                List.of(
                                        Column.text(
                                                form.words().text("start.label"),
                                                "label",
                                                12,
                                                LeverEntry::label,
                                                LeverEntry::withLabel),
                                        Column.typed(
                                                form.words().text("start.lowest"),
                                                Fields.LEVER_VALUE,
                                                "lowest",
                                                LeverEntry::lowest,
                                                LeverEntry::withLowest),
                                        Column.typed(
                                                form.words().text("start.highest"),
                                                Fields.LEVER_VALUE,
                                                "highest",
                                                LeverEntry::highest,
                                                LeverEntry::withHighest),
                                        Column.typed(
                                                form.words().text("start.step"),
                                                Fields.LEVER_STEP,
                                                "step",
                                                LeverEntry::step,
                                                LeverEntry::withStep),
                                        Column.choice(
                                                form.words().text("start.wider"),
                                                "widerWhen",
                                                Widening.class,
                                                LeverEntry::widerWhen,
                                                LeverEntry::withWiderWhen)))
                        .node());
    }

    private Node openings() {
        EntryPath<MachineEntries> machine = Places.MACHINE;
        return form.group(
                "start.openings",
                form.row(
                        form.choice(
                                "start.flowsCount",
                                "/machine/flowTableBasis",
                                machine.then(MachineEntries::flowTableBasis, MachineEntries::withFlowTableBasis),
                                Choices.answers(FlowTableBasis.class)),
                        form.typed(
                                "start.tableDensity",
                                Fields.BULK_DENSITY,
                                "/machine/flowTableDensity",
                                machine.then(MachineEntries::flowTableDensity, MachineEntries::withFlowTableDensity))),
                new EntryTable<>(
                                form,
                                machine.then(MachineEntries::openings, MachineEntries::withOpenings),
                                NO_OPENING,
                                "/machine/openings",
                                true,
                                List.of(
                                        Column.typed(
                                                form.words().text("field.opening"),
                                                Fields.OPENING,
                                                "opening",
                                                OpeningEntry::opening,
                                                OpeningEntry::withOpening),
                                        Column.typed(
                                                form.words().text("field.flow"),
                                                Fields.FLOW,
                                                "flow",
                                                OpeningEntry::flow,
                                                OpeningEntry::withFlow)))
                        .node());
    }
}
