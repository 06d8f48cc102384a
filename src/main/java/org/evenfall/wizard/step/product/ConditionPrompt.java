package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** How it runs out of the bag. */
public final class ConditionPrompt extends FormPrompt {

    /** @param picture of the step */
    public ConditionPrompt(Form form, Supplier<? extends Node> picture) {
        super("1c", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(form().choice(ProductPaths.CONDITION), form().choice(ProductPaths.BLEND));
    }

    @Override
    public Help help() {
        return Help.terms("blend", "caked").from("source.humidityUrea");
    }
}
