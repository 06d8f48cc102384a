package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Which product it is. */
public final class WhichProductPrompt extends FormPrompt {

    /** @param picture of the step */
    public WhichProductPrompt(Form form, Supplier<? extends Node> picture) {
        super("1a", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().choice(ProductPaths.FORM),
                form().row(form().text(ProductPaths.NAME), form().quantity(ProductPaths.NITROGEN)),
                form().text(ProductPaths.DELIVERY));
    }

    @Override
    public Help help() {
        return Help.terms("granular", "prilled", "nitrogenContent", "delivery").from("source.ureaNitrogen");
    }
}
