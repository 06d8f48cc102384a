package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** The sizes of the granules. */
public final class SievesPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public SievesPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1g";
    }

    @Override
    public Node entries() {
        return new SieveForm(form).node();
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public boolean optional() {
        return true;
    }
}
