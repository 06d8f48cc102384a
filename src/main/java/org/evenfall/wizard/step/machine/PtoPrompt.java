package org.evenfall.wizard.step.machine;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** The PTO speed. */
public final class PtoPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public PtoPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "3d";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.row(form.quantity(MachineCheckPaths.PTO_MEASURED), form.text(MachineCheckPaths.PTO_INSTRUMENT)),
                form.text(MachineCheckPaths.LEVEL_OVERRIDE_REASON));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
