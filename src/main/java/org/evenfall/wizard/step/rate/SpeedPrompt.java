package org.evenfall.wizard.step.rate;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.RateSentences;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.ReservedSentence;

/** The forward speed over a measured length. */
public final class SpeedPrompt extends FormPrompt {

    /** @param picture of the step */
    public SpeedPrompt(Form form, Supplier<? extends Node> picture) {
        super("5d", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(
                EntryTable.rows(
                                form(),
                                RatePaths.SPEED_RUNS,
                                List.of(
                                        Column.quantity(form(), RatePaths.RUN_DISTANCE),
                                        Column.quantity(form(), RatePaths.RUN_TIME)))
                        .node(),
                ReservedSentence.of(
                        form(),
                        "figure-line",
                        2,
                        () -> RateSentences.speed(
                                form().words(),
                                form().model().assessment().rate().speed())));
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("flyingStart").from("source.speed", "source.timing");
    }
}
