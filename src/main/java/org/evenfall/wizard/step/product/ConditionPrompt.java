package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** How it runs out of the bag. */
public final class ConditionPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public ConditionPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1c";
    }

    @Override
    public Node entries() {
        return new VBox(form.choice(ProductPaths.CONDITION), form.choice(ProductPaths.BLEND));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
