package org.evenfall.wizard.step.match;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.TodayPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.SettingsForm;

/** Today's settings with the product spread so far. */
public final class TodayPrompt extends FormPrompt {

    /** @param picture of the step */
    public TodayPrompt(Form form, Supplier<? extends Node> picture) {
        super("2a", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(
                                form().choice(TodayPaths.FORM),
                                form().quantity(TodayPaths.BULK_DENSITY),
                                form().choice(TodayPaths.EVENNESS),
                                form().quantity(TodayPaths.TESTED_CV)),
                SettingsForm.of(form(), TodayPaths.SETTINGS.only()));
    }

    @Override
    public Help help() {
        return Help.terms("lever", "trayCv").from("source.today");
    }
}
