package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** What was in the machine before. */
public final class BeforePrompt extends FormPrompt {

    /** @param picture of the step */
    public BeforePrompt(Form form, Supplier<? extends Node> picture) {
        super("1d", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(form().choice(ProductPaths.NITRATE_BEFORE), form().choice(ProductPaths.CLEAN_AND_DRY));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("nitrateProduct").from("source.humidity");
    }
}
