package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** The sizes of the granules. */
public final class SievesPrompt extends FormPrompt {

    /** @param picture of the step */
    public SievesPrompt(Form form, Supplier<? extends Node> picture) {
        super("1g", form, picture);
    }

    @Override
    public Node entries() {
        return new SieveForm(form()).node();
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("aperture", "medianSize", "spreadIndex", "sgn")
                .from("source.sieveFit", "source.sievesFarApart", "source.ureaSize");
    }
}
