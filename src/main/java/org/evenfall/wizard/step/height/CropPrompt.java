package org.evenfall.wizard.step.height;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** How high the crop is. */
public final class CropPrompt extends FormPrompt {

    /** @param picture of the step */
    public CropPrompt(Form form, Supplier<? extends Node> picture) {
        super("4a", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                EntryTable.values(form(), HeightPaths.CROP_HEIGHTS).node(),
                // no longer asked; that of an older file is shown, so that it can be changed
                VisibleWhen.when(
                        form(),
                        () -> !form().model().setup().height().growth().isBlank(),
                        form().quantity(HeightPaths.GROWTH)));
    }

    @Override
    public Help help() {
        return Help.terms("cropTop").from("source.height");
    }
}
