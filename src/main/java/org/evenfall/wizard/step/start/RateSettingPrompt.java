package org.evenfall.wizard.step.start;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.VisibleWhen;

/** How the rate is set. */
public final class RateSettingPrompt implements Prompt {

    private final Form form;
    private final Node picture;

    /** @param picture of the step */
    public RateSettingPrompt(Form form, Node picture) {
        this.form = form;
        this.picture = picture;
    }

    @Override
    public String id() {
        return "0e";
    }

    @Override
    public Node entries() {
        return new VBox(
                form.choice(MachinePaths.RATE_SETTING),
                VisibleWhen.when(
                        form,
                        () -> form.model().setup().machine().rateSetting().byFactor(),
                        form.choice(MachinePaths.FACTOR_RULE)));
    }

    @Override
    public Node picture() {
        return picture;
    }
}
