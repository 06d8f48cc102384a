package org.evenfall.wizard.step.machine;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Level and tyres. */
public final class LevelPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public LevelPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "3c";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.row(
                        form.quantity(MachineCheckPaths.HEIGHT_LEFT),
                        form.quantity(MachineCheckPaths.HEIGHT_RIGHT),
                        form.quantity(MachineCheckPaths.TILT)),
                form.row(form.quantity(MachineCheckPaths.TYRE_LEFT), form.quantity(MachineCheckPaths.TYRE_RIGHT)));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
