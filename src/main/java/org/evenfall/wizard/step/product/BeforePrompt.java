package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** What was in the machine before. */
public final class BeforePrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public BeforePrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1d";
    }

    @Override
    public Node entries() {
        return new VBox(form.choice(ProductPaths.NITRATE_BEFORE), form.choice(ProductPaths.CLEAN_AND_DRY));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
