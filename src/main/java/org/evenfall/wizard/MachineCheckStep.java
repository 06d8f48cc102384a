package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryPath;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.picture.MachineCheckPicture;

/** Step 3: the machine looked over in the yard, in the order in which one walks round it. */
final class MachineCheckStep implements StepView {

    private static final EntryPath<MachineCheckEntries> YARD = Places.YARD;

    private final Form form;
    private final MachineCheckPicture picture;

    MachineCheckStep(Form form) {
        this.form = form;
        this.picture = new MachineCheckPicture(form.words());
        form.follow(() -> picture.show(form.model().assessment().machineCheck()));
    }

    @Override
    public Step step() {
        return Step.MACHINE;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        MachineCheckResult machineCheck = form.model().assessment().machineCheck();
        return machineCheck.ptoRpm() == null ? "" : form.words().number(machineCheck.ptoRpm(), 0, Unit.RPM);
    }

    @Override
    public Node entries() {
        return new VBox(
                form.group(
                        "yard.vanes",
                        form.sentence("yard.vanesHow"),
                        vanes(),
                        form.text(
                                "yard.vaneReason",
                                "/yard/vaneOverrideReason",
                                YARD.then(
                                        MachineCheckEntries::vaneOverrideReason,
                                        MachineCheckEntries::withVaneOverrideReason))),
                form.group("yard.parts", checks(), form.findings("/yard/checks")),
                form.group(
                        "yard.measured",
                        form.row(
                                form.typed(
                                        "yard.heightLeft",
                                        Fields.FRAME_HEIGHT,
                                        "/yard/heightLeft",
                                        YARD.then(
                                                MachineCheckEntries::heightLeft, MachineCheckEntries::withHeightLeft)),
                                form.typed(
                                        "yard.heightRight",
                                        Fields.FRAME_HEIGHT,
                                        "/yard/heightRight",
                                        YARD.then(
                                                MachineCheckEntries::heightRight,
                                                MachineCheckEntries::withHeightRight)),
                                form.typed(
                                        "field.tilt",
                                        Fields.TILT,
                                        "/yard/tilt",
                                        YARD.then(MachineCheckEntries::tilt, MachineCheckEntries::withTilt))),
                        form.row(
                                form.typed(
                                        "yard.tyreLeft",
                                        Fields.TYRE_PRESSURE,
                                        "/yard/tyreLeft",
                                        YARD.then(MachineCheckEntries::tyreLeft, MachineCheckEntries::withTyreLeft)),
                                form.typed(
                                        "yard.tyreRight",
                                        Fields.TYRE_PRESSURE,
                                        "/yard/tyreRight",
                                        YARD.then(MachineCheckEntries::tyreRight, MachineCheckEntries::withTyreRight))),
                        form.row(
                                form.typed(
                                        "yard.ptoMeasured",
                                        Fields.PTO_SPEED,
                                        "/yard/ptoMeasured",
                                        YARD.then(
                                                MachineCheckEntries::ptoMeasured,
                                                MachineCheckEntries::withPtoMeasured)),
                                form.text(
                                        "yard.ptoInstrument",
                                        "/yard/ptoInstrument",
                                        YARD.then(
                                                MachineCheckEntries::ptoInstrument,
                                                MachineCheckEntries::withPtoInstrument))),
                        form.text(
                                "yard.levelReason",
                                "/yard/levelOverrideReason",
                                YARD.then(
                                        MachineCheckEntries::levelOverrideReason,
                                        MachineCheckEntries::withLevelOverrideReason))));
    }

    private Node vanes() {
        return new EntryTable<>(
                        form,
                        YARD.then(MachineCheckEntries::vanes, MachineCheckEntries::withVanes),
                        VaneEntry.EMPTY,
                        "/yard/vanes",
                        true,
                        List.of(
                                Column.choice(
                                        form.words().text("yard.disc"),
                                        "disc",
                                        Side.class,
                                        VaneEntry::disc,
                                        VaneEntry::withDisc),
                                Column.text(
                                        form.words().text("yard.vaneLabel"),
                                        "label",
                                        7,
                                        VaneEntry::label,
                                        VaneEntry::withLabel),
                                Column.typed(
                                        form.words().text("yard.lengthNow"),
                                        Fields.VANE_LENGTH,
                                        "length",
                                        VaneEntry::length,
                                        VaneEntry::withLength),
                                Column.typed(
                                        form.words().text("yard.lengthNew"),
                                        Fields.VANE_LENGTH,
                                        "lengthNew",
                                        VaneEntry::lengthNew,
                                        VaneEntry::withLengthNew),
                                Column.choice(
                                        form.words().text("yard.straight"),
                                        "straightSmoothUnholed",
                                        CheckAnswer.class,
                                        VaneEntry::straightSmoothUnholed,
                                        VaneEntry::withStraightSmoothUnholed)))
                .node();
    }

    private Node checks() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        int row = 0;
        for (CheckItem item : CheckItem.values()) {
            EntryPath<CheckEntry> place = YARD.then(checks -> CheckAnswers.of(checks, item), CheckAnswers::with);
            String pointer = "/yard/checks/" + item;
            Label name = new Label(form.words().choice(item));
            name.setWrapText(true);
            grid.add(name, 0, row);
            grid.add(
                    new Choices<>(form, pointer, place.then(CheckEntry::answer, CheckEntry::withAnswer))
                            .buttons(CheckAnswers.answers(item)),
                    1,
                    row);
            if (CheckAnswers.mayBeOverridden(item)) {
                TextField reason = form.textField(
                        pointer + "/reason",
                        place.then(CheckEntry::overrideReason, CheckEntry::withOverrideReason),
                        form.words().text("yard.reason"),
                        14);
                reason.setPromptText(form.words().text("yard.reason"));
                form.follow(() -> {
                    boolean failed = place.get(form.model().setup()).answer() == CheckAnswer.FAILED;
                    reason.setVisible(failed);
                    reason.setManaged(failed);
                });
                grid.add(reason, 2, row);
            }
            row++;
        }
        Button all = form.button(
                "yard.restGood",
                () -> form.model()
                        .set(YARD, CheckAnswers.restGood(YARD.get(form.model().setup()))));
        return new VBox(8, grid, all);
    }
}
