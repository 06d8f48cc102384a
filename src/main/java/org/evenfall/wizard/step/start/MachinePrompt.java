package org.evenfall.wizard.step.start;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Which machine: one of the farm, or a new one by its name. */
public final class MachinePrompt extends FormPrompt {

    private final KnownMachines machines;
    private VBox known = new VBox();

    /** @param picture of the step */
    public MachinePrompt(Form form, Supplier<? extends Node> picture, KnownMachines machines) {
        super("0c", form, picture);
        this.machines = machines;
    }

    @Override
    public Node entries() {
        known = new VBox();
        known.getStyleClass().add("known-machines");
        return new VBox(known, form().row(form().text(MachinePaths.NAME), form().text(MachinePaths.HANDBOOK)));
    }

    @Override
    public void shown() {
        ToggleGroup group = new ToggleGroup();
        known.getChildren()
                .setAll(machines.all().stream()
                        .map(machine -> choice(machine, group))
                        .toList());
    }

    private RadioButton choice(MachineEntries machine, ToggleGroup group) {
        RadioButton choose = new RadioButton(form().words()
                .text(
                        "home.machine",
                        Arg.text(machine.name()),
                        Arg.count(machine.levers().size())));
        choose.setMnemonicParsing(false);
        choose.setToggleGroup(group);
        choose.setSelected(machine.equals(form().model().setup().machine()));
        choose.setOnAction(event -> machines.choose(machine));
        return choose;
    }

    @Override
    public Help help() {
        return Help.terms("broadcaster");
    }
}
