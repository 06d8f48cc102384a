package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** How many bags the sample is from. */
public final class SamplePrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public SamplePrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1e";
    }

    @Override
    public Node entries() {
        return form.row(form.quantity(ProductPaths.BAGS_DELIVERED), form.quantity(ProductPaths.BAGS_SAMPLED));
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
