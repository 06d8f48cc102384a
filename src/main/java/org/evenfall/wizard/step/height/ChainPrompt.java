package org.evenfall.wizard.step.height;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** A chain that shows the height. */
public final class ChainPrompt extends FormPrompt {

    /** @param picture of the step */
    public ChainPrompt(Form form, Supplier<? extends Node> picture) {
        super("4c", form, picture);
    }

    @Override
    public Node entries() {
        return form().quantity(HeightPaths.CHAIN_POINT);
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("chain");
    }
}
