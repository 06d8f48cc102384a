package org.evenfall.wizard.step.match;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.setup.FirstGuess;
import org.evenfall.setup.TakeOverSettings;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.SettingsForm;
import org.evenfall.wizard.form.VisibleWhen;

/** The settings to start from. */
public final class StartSettingsPrompt extends FormPrompt {

    private Label replaced = new Label();

    /** @param picture of the step */
    public StartSettingsPrompt(Form form, Supplier<? extends Node> picture) {
        super("2d", form, picture);
    }

    @Override
    public Node entries() {
        replaced = new Label();
        replaced.getStyleClass().add("figure-line");
        replaced.setWrapText(true);
        return new VBox(SettingsForm.of(form(), MatchPaths.SETTINGS.only()), firstGuess(), takeOver(), replaced);
    }

    /** Takes over the settings of the chosen product, and says what that replaced. */
    private Node takeOver() {
        Label differs = VisibleWhen.sentence(form(), "sentence", this::differs);
        return VisibleWhen.when(
                form(),
                () -> !TakeOverSettings.changes(form().model().setup()).isEmpty(),
                new VBox(differs, form().button("match.takeOver", this::takenOver)));
    }

    private void takenOver() {
        List<TakeOverSettings.Change> changes =
                TakeOverSettings.changes(form().model().setup());
        form().model().change(TakeOverSettings::takenOver);
        replaced.setText(form().words().text("match.tookOver", Arg.text(lines(changes))));
    }

    private String differs() {
        List<TakeOverSettings.Change> changes =
                TakeOverSettings.changes(form().model().setup());
        return changes.isEmpty() ? "" : form().words().text("match.differs", Arg.text(lines(changes)));
    }

    private String lines(List<TakeOverSettings.Change> changes) {
        return changes.stream()
                .map(change -> form().words()
                        .text(
                                "match.change",
                                change.name(),
                                Arg.text(change.before().isEmpty() ? "–" : change.before()),
                                Arg.text(change.after())))
                .collect(Collectors.joining("; "));
    }

    @Override
    public void shown() {
        replaced.setText("");
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
