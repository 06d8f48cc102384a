package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Whether it is treated against the loss of nitrogen. */
public final class TreatedPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public TreatedPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1b";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.choice(ProductPaths.TREATED),
                form.row(form.text(ProductPaths.INHIBITOR), form.text(ProductPaths.USE_BY)));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
