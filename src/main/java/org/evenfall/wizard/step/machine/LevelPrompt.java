package org.evenfall.wizard.step.machine;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Level and tyres. */
public final class LevelPrompt extends FormPrompt {

    /** @param picture of the step */
    public LevelPrompt(Form form, Supplier<? extends Node> picture) {
        super("3c", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(
                                form().quantity(MachineCheckPaths.HEIGHT_LEFT),
                                form().quantity(MachineCheckPaths.HEIGHT_RIGHT),
                                form().quantity(MachineCheckPaths.TILT)),
                form().row(
                                form().quantity(MachineCheckPaths.TYRE_LEFT),
                                form().quantity(MachineCheckPaths.TYRE_RIGHT)));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("tilt").from("source.level", "source.tyres");
    }
}
