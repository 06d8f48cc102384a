package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** How many bags the sample is from. */
public final class SamplePrompt extends FormPrompt {

    /** @param picture of the step */
    public SamplePrompt(Form form, Supplier<? extends Node> picture) {
        super("1e", form, picture);
    }

    @Override
    public Node entries() {
        return form().row(form().quantity(ProductPaths.BAGS_DELIVERED), form().quantity(ProductPaths.BAGS_SAMPLED));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("sample").from("source.sampling");
    }
}
