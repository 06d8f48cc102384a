package org.evenfall.wizard.step.height;

import javafx.scene.Node;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** A chain that shows the height. */
public final class ChainPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public ChainPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "4c";
    }

    @Override
    public Node entries() {
        return form.quantity(HeightPaths.CHAIN_POINT);
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
