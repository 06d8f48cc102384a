package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Which machine. */
public final class MachinePrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public MachinePrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "0c";
    }

    @Override
    public Node entries() {
        return form.row(form.text(MachinePaths.NAME), form.text(MachinePaths.HANDBOOK));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
