package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.ProductLines;
import org.evenfall.result.RatePlanLines;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** What this product is: nothing to type. */
public final class ProductResultPrompt extends FormPrompt {

    /** @param picture of the step */
    public ProductResultPrompt(Form form, Supplier<? extends Node> picture) {
        super("1h", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                line(() -> ProductLines.density(
                        form().words(), form().model().assessment().product().density())),
                line(() -> ProductLines.sieve(
                        form().words(), form().model().assessment().product().sieve())),
                line(() -> RatePlanLines.against(
                        form().words(), form().model().assessment().rate().againstOther())));
    }

    private Node line(Supplier<String> text) {
        return VisibleWhen.sentence(form(), "figure-line", text);
    }

    @Override
    public Help help() {
        return Help.terms("bulkDensity", "medianSize", "model")
                .from("source.flightModel", "source.reach", "source.packing", "source.nitrateDensity");
    }
}
