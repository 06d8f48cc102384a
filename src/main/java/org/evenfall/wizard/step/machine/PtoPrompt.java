package org.evenfall.wizard.step.machine;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** The PTO speed. */
public final class PtoPrompt extends FormPrompt {

    /** @param picture of the step */
    public PtoPrompt(Form form, Supplier<? extends Node> picture) {
        super("3d", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(
                                form().quantity(MachineCheckPaths.PTO_MEASURED),
                                form().text(MachineCheckPaths.PTO_INSTRUMENT)),
                form().row(form().quantity(MachineCheckPaths.ENGINE_SPEED), form().text(MachineCheckPaths.GEAR)));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("ptoSpeed").from("source.pto");
    }
}
