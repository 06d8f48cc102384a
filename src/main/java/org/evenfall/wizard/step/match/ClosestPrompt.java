package org.evenfall.wizard.step.match;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** The closest of them. */
public final class ClosestPrompt extends FormPrompt {

    /** @param picture of the step */
    public ClosestPrompt(Form form, Supplier<? extends Node> picture) {
        super("2c", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                new RankedForm(form()).node(),
                form().row(
                                form().choice(MatchPaths.START_WITHOUT_REFERENCE),
                                form().choice(MatchPaths.TRAY_TEST_ONLY)));
    }

    /** What was computed longer, on demand, is only here. */
    @Override
    public boolean end() {
        return false;
    }

    @Override
    public Help help() {
        return Help.terms("closest", "trayCv", "model")
                .from("source.flightModel", "source.landingModel", "source.verdict");
    }
}
