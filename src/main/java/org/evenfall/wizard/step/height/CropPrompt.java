package org.evenfall.wizard.step.height;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.HeightPaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** How high the crop is. */
public final class CropPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public CropPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "4a";
    }

    @Override
    public Node entries() {
        return new VBox(EntryTable.values(form, HeightPaths.CROP_HEIGHTS).node(), form.quantity(HeightPaths.GROWTH));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
