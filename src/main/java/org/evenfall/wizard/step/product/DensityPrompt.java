package org.evenfall.wizard.step.product;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.ProductLines;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.VisibleWhen;

/** The bulk density. */
public final class DensityPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public DensityPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "1f";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.row(form.quantity(ProductPaths.CONTAINER_VOLUME), form.quantity(ProductPaths.CONTAINER_EMPTY)),
                EntryTable.values(form, ProductPaths.CONTAINER_FULL).node(),
                VisibleWhen.sentence(
                        form,
                        "figure-line",
                        () -> ProductLines.density(
                                form.words(),
                                form.model().assessment().product().density())));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
