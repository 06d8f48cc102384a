package org.evenfall.wizard;

import java.util.ArrayList;
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
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.entry.VaneEntry;
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
                form.group("yard.parts", checks(), form.told("/yard/checks")),
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
        return new Rows<>(
                        form,
                        YARD.then(MachineCheckEntries::vanes, MachineCheckEntries::withVanes),
                        VaneEntry.EMPTY,
                        "/yard/vanes",
                        true,
                        List.of(
                                Rows.choice(
                                        form,
                                        form.words().text("yard.disc"),
                                        Side.class,
                                        VaneEntry::disc,
                                        VaneEntry::withDisc),
                                Rows.text(
                                        form,
                                        form.words().text("yard.vaneLabel"),
                                        "label",
                                        7,
                                        VaneEntry::label,
                                        VaneEntry::withLabel),
                                Rows.typed(
                                        form,
                                        form.words().text("yard.lengthNow"),
                                        Fields.VANE_LENGTH,
                                        "length",
                                        VaneEntry::length,
                                        VaneEntry::withLength),
                                Rows.typed(
                                        form,
                                        form.words().text("yard.lengthNew"),
                                        Fields.VANE_LENGTH,
                                        "lengthNew",
                                        VaneEntry::lengthNew,
                                        VaneEntry::withLengthNew),
                                Rows.choice(
                                        form,
                                        form.words().text("yard.straight"),
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
            EntryPath<CheckEntry> place =
                    EntryPath.of(setup -> entry(setup, item), (setup, entry) -> with(setup, entry));
            String pointer = "/yard/checks/" + item;
            Label name = new Label(form.words().choice(item));
            name.setWrapText(true);
            grid.add(name, 0, row);
            grid.add(
                    form.bareChoice(pointer, place.then(CheckEntry::answer, CheckEntry::withAnswer), answers(item)),
                    1,
                    row);
            if (MachineCheck.mayBeOverridden(item)) {
                TextField reason = form.textField(
                        pointer + "/reason",
                        place.then(CheckEntry::overrideReason, CheckEntry::withOverrideReason),
                        form.words().text("yard.reason"),
                        14);
                reason.setPromptText(form.words().text("yard.reason"));
                form.follow(() -> {
                    boolean failed = entry(form.model().setup(), item).answer() == CheckAnswer.FAILED;
                    reason.setVisible(failed);
                    reason.setManaged(failed);
                });
                grid.add(reason, 2, row);
            }
            row++;
        }
        Button all = form.button("yard.restGood", () -> form.model().change(this::restGood));
        return new VBox(8, grid, all);
    }

    private static List<CheckAnswer> answers(CheckItem item) {
        return item == CheckItem.AGITATOR
                ? List.of(CheckAnswer.GOOD, CheckAnswer.FAILED, CheckAnswer.NOT_FITTED)
                : List.of(CheckAnswer.GOOD, CheckAnswer.FAILED);
    }

    private Setup restGood(Setup setup) {
        Setup next = setup;
        for (CheckItem item : CheckItem.values()) {
            if (entry(next, item).answer() == CheckAnswer.UNANSWERED) {
                next = with(next, entry(next, item).withAnswer(CheckAnswer.GOOD));
            }
        }
        return next;
    }

    private static CheckEntry entry(Setup setup, CheckItem item) {
        return setup.machineCheck().checks().stream()
                .filter(check -> check.item() == item)
                .findFirst()
                .orElse(new CheckEntry(item, CheckAnswer.UNANSWERED, "", UnknownKeys.NONE));
    }

    private static Setup with(Setup setup, CheckEntry entry) {
        List<CheckEntry> checks = new ArrayList<>();
        boolean there = false;
        for (CheckEntry check : setup.machineCheck().checks()) {
            checks.add(check.item() == entry.item() ? entry : check);
            there |= check.item() == entry.item();
        }
        if (!there) {
            checks.add(entry);
        }
        return setup.withMachineCheck(setup.machineCheck().withChecks(checks));
    }
}
