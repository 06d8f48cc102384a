package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Where, what and how wide. */
public final class JobPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public JobPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "0b";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.row(form.text(StartPaths.FARM), form.text(StartPaths.FIELD)),
                form.row(form.text(StartPaths.CROP), form.text(StartPaths.SEASON)),
                form.row(form.quantity(StartPaths.TRAMLINE_WIDTH), form.choice(StartPaths.DRIVING_PATTERN)));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
