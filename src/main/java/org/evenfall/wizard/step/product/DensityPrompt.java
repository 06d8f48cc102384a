package org.evenfall.wizard.step.product;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.ProductLines;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** The bulk density. */
public final class DensityPrompt extends FormPrompt {

    /** @param picture of the step */
    public DensityPrompt(Form form, Supplier<? extends Node> picture) {
        super("1f", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(
                                form().quantity(ProductPaths.CONTAINER_VOLUME),
                                form().quantity(ProductPaths.CONTAINER_EMPTY)),
                EntryTable.values(form(), ProductPaths.CONTAINER_FULL).node(),
                VisibleWhen.sentence(
                        form(),
                        "figure-line",
                        () -> ProductLines.density(
                                form().words(),
                                form().model().assessment().product().density())));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("bulkDensity", "strike")
                .from("source.fillings", "source.ureaDensity", "source.nitrateDensity");
    }
}
