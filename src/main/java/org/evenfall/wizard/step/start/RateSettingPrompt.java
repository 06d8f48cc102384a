package org.evenfall.wizard.step.start;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** How the rate is set. */
public final class RateSettingPrompt extends FormPrompt {

    private final KnownMachines machines;

    /** @param picture of the step */
    public RateSettingPrompt(Form form, Supplier<? extends Node> picture, KnownMachines machines) {
        super("0e", form, picture);
        this.machines = machines;
    }

    @Override
    public boolean known() {
        return machines.isKnown();
    }

    @Override
    public Node entries() {
        return new VBox(
                form().choice(MachinePaths.RATE_SETTING),
                VisibleWhen.when(
                        form(),
                        () -> form().model().setup().machine().rateSetting().byFactor(),
                        form().choice(MachinePaths.FACTOR_RULE)));
    }

    @Override
    public Help help() {
        return Help.terms("opening", "factor");
    }
}
