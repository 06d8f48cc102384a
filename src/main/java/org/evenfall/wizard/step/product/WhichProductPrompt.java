package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Which product it is. */
public final class WhichProductPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public WhichProductPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1a";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.choice(ProductPaths.FORM),
                form.row(form.text(ProductPaths.NAME), form.quantity(ProductPaths.NITROGEN)),
                form.text(ProductPaths.DELIVERY));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
