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
import org.evenfall.quantity.Unit;
import org.evenfall.setup.CheckAnswers;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Choices;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.TextEntry;
import org.evenfall.wizard.picture.MachineCheckPicture;

/** Step 3: the machine looked over in the yard, in the order in which one walks round it. */
final class MachineCheckStep implements StepView {

    private static final EntryPath<MachineCheckEntries> CHECK = MachineCheckPaths.MACHINE_CHECK.only();

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
                        form.text(MachineCheckPaths.VANE_OVERRIDE_REASON)),
                form.group("yard.parts", checks(), form.findings(MachineCheckPaths.CHECKS.pointer())),
                form.group(
                        "yard.measured",
                        form.row(
                                form.quantity(MachineCheckPaths.HEIGHT_LEFT),
                                form.quantity(MachineCheckPaths.HEIGHT_RIGHT),
                                form.quantity(MachineCheckPaths.TILT)),
                        form.row(
                                form.quantity(MachineCheckPaths.TYRE_LEFT),
                                form.quantity(MachineCheckPaths.TYRE_RIGHT)),
                        form.row(
                                form.quantity(MachineCheckPaths.PTO_MEASURED),
                                form.text(MachineCheckPaths.PTO_INSTRUMENT)),
                        form.text(MachineCheckPaths.LEVEL_OVERRIDE_REASON)));
    }

    private Node vanes() {
        return EntryTable.rows(
                        form,
                        MachineCheckPaths.VANES,
                        List.of(
                                Column.choice(form, MachineCheckPaths.VANE_DISC),
                                Column.text(form, MachineCheckPaths.VANE_LABEL, 7),
                                Column.quantity(form, MachineCheckPaths.VANE_LENGTH),
                                Column.quantity(form, MachineCheckPaths.VANE_LENGTH_NEW),
                                Column.choice(form, MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED)))
                .node();
    }

    private Node checks() {
        GridPane grid = new GridPane();
        grid.setId(MachineCheckPaths.CHECKS.pointer());
        grid.getStyleClass().add("rows");
        int row = 0;
        for (CheckItem item : CheckItem.values()) {
            // by item, wherever in the list its answer is kept
            EntryPath<CheckEntry> place = CHECK.then(
                            MachineCheckPaths.CHECKS.name(), checks -> checks, (old, checks) -> checks)
                    .then(item.name(), checks -> CheckAnswers.of(checks, item), CheckAnswers::with);
            Label name = new Label(form.words().choice(item));
            name.setWrapText(true);
            grid.add(name, 0, row);
            grid.add(
                    new Choices<>(form, MachineCheckPaths.CHECK_ANSWER.at(place)).buttons(CheckAnswers.answers(item)),
                    1,
                    row);
            if (CheckAnswers.mayBeOverridden(item)) {
                TextField reason = TextEntry.field(
                        form,
                        form.words().text(MachineCheckPaths.CHECK_OVERRIDE_REASON.labelKey()),
                        MachineCheckPaths.CHECK_OVERRIDE_REASON.at(place),
                        14);
                reason.setPromptText(reason.getAccessibleText());
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
                        .set(CHECK, CheckAnswers.restGood(CHECK.get(form.model().setup()))));
        return new VBox(8, grid, all);
    }
}
