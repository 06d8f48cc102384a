package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Whether it is treated against the loss of nitrogen. */
public final class TreatedPrompt extends FormPrompt {

    /** @param picture of the step */
    public TreatedPrompt(Form form, Supplier<? extends Node> picture) {
        super("1b", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().choice(ProductPaths.TREATED),
                form().row(form().text(ProductPaths.INHIBITOR), form().text(ProductPaths.USE_BY)),
                form().findings(ProductPaths.TREATED.pointer()));
    }

    @Override
    public Help help() {
        return Help.terms("inhibitor").from("source.loss", "source.lossTreated");
    }
}
