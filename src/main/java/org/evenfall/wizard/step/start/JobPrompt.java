package org.evenfall.wizard.step.start;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Where, what and how wide. */
public final class JobPrompt extends FormPrompt {

    /** @param picture of the step */
    public JobPrompt(Form form, Supplier<? extends Node> picture) {
        super("0b", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(form().text(StartPaths.FARM), form().text(StartPaths.FIELD)),
                form().row(form().text(StartPaths.CROP), form().text(StartPaths.SEASON)),
                form().row(form().quantity(StartPaths.TRAMLINE_WIDTH), form().choice(StartPaths.DRIVING_PATTERN)));
    }

    @Override
    public Help help() {
        return Help.terms("tramline", "drivingPattern");
    }
}
