package org.evenfall.wizard.step.match;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** The closest of them. */
public final class ClosestPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public ClosestPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "2c";
    }

    @Override
    public Node entries() {
        return new VBox(
                new RankedForm(form).node(),
                form.row(form.choice(MatchPaths.START_WITHOUT_REFERENCE), form.choice(MatchPaths.TRAY_TEST_ONLY)));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
