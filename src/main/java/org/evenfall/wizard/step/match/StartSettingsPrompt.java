package org.evenfall.wizard.step.match;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.FirstGuess;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.SettingsForm;
import org.evenfall.wizard.form.VisibleWhen;

/** The settings to start from. */
public final class StartSettingsPrompt extends FormPrompt {

    /** @param picture of the step */
    public StartSettingsPrompt(Form form, Node picture) {
        super("2d", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(SettingsForm.of(form(), MatchPaths.SETTINGS.only()), firstGuess());
    }

    @Override
    public Help help() {
        return Help.terms("lever", "ptoSpeed").from("source.firstGuess");
    }

    /** Fills in the first guess, while there is one. */
    private Node firstGuess() {
        return VisibleWhen.when(
                form(),
                () -> form().model().assessment().findings().stream()
                        .anyMatch(finding -> finding.source().equals(FirstGuess.SOURCE)),
                form().button(
                                "match.start.fill",
                                () -> form().model()
                                        .change(setup -> FirstGuess.filledIn(
                                                setup, form().model().assessment(), form()::numberText))));
    }
}
