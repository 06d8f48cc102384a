package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;

/** The sizes of the granules. */
public final class SievesPrompt extends FormPrompt {

    /** @param picture of the step */
    public SievesPrompt(Form form, Node picture) {
        super("1g", form, picture);
    }

    @Override
    public Node entries() {
        return new SieveForm(form()).node();
    }
}
