package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Which machine. */
public final class MachinePrompt extends FormPrompt {

    /** @param picture of the step */
    public MachinePrompt(Form form, Node picture) {
        super("0c", form, picture);
    }

    @Override
    public Node entries() {
        return form().row(form().text(MachinePaths.NAME), form().text(MachinePaths.HANDBOOK));
    }

    @Override
    public Help help() {
        return Help.terms("broadcaster");
    }
}
