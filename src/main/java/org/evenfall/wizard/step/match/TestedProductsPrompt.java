package org.evenfall.wizard.step.match;

import javafx.scene.Node;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** The products tested on this machine. */
public final class TestedProductsPrompt implements Prompt {

    private final Form form;
    private final Node picture;
    private final Node library;

    /** @param picture of the step */
    public TestedProductsPrompt(Form form, Node picture, Node library) {
        this.form = form;
        this.picture = picture;
        this.library = library;
    }

    @Override
    public String id() {
        return "2b";
    }

    @Override
    public Node entries() {
        return library;
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
