package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.ProductLines;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.VisibleWhen;

/** What this product is: nothing to type. */
public final class ProductResultPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public ProductResultPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1h";
    }

    @Override
    public Node entries() {
        return new VBox(
                VisibleWhen.sentence(
                        form,
                        "figure-line",
                        () -> ProductLines.density(
                                form.words(),
                                form.model().assessment().product().density())),
                VisibleWhen.sentence(
                        form,
                        "figure-line",
                        () -> ProductLines.sieve(
                                form.words(),
                                form.model().assessment().product().sieve())));
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public boolean optional() {
        return true;
    }
}
