package org.evenfall.wizard.step.match;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import org.evenfall.finding.Arg;
import org.evenfall.reference.MatchResult;
import org.evenfall.result.MatchLines;
import org.evenfall.setup.entry.Setup;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Keyboard;
import org.jspecify.annotations.Nullable;

/** Starts the simulation of the match, shows how far it is, stops it, and shows when it failed. */
final class MatchSimulationView {

    private final Form form;
    private final MatchSimulation.Computation computation;
    private final Runnable changed;
    private final HBox row = new HBox();
    private final ProgressBar bar = new ProgressBar(0);
    private final Label sentence = new Label();
    private final Button start;
    private final Button stop;
    private @Nullable MatchSimulation running;
    private @Nullable Setup simulated;
    private @Nullable MatchResult result;

    /**
     * @param computation computes the match
     * @param changed called when there is another match to show
     */
    MatchSimulationView(Form form, MatchSimulation.Computation computation, Runnable changed) {
        this.form = form;
        this.computation = computation;
        this.changed = changed;
        row.getStyleClass().add("closer");
        start = form.button("match.closer", this::run);
        stop = form.button("match.closerStop", this::stop);
        bar.setAccessibleText(form.words().text("match.closerBar"));
        sentence.setWrapText(true);
        row.getChildren().setAll(start, sentence);
    }

    Node node() {
        return row;
    }

    /** The match to show: the simulated one as long as the setup is the one that was simulated. */
    @Nullable
    MatchResult match() {
        if (result != null && form.model().setup().equals(simulated)) {
            return result;
        }
        MatchResult usual = form.model().assessment().match();
        sentence.setText(repeats(usual));
        return usual;
    }

    private String repeats(@Nullable MatchResult match) {
        return MatchLines.repeats(form.words(), match);
    }

    private void run() {
        if (running != null) {
            running.cancel();
        }
        MatchSimulation task = new MatchSimulation(form.model().setup(), computation);
        running = task;
        bar.progressProperty().bind(task.progressProperty());
        row.getChildren().setAll(bar, stop);
        Keyboard.to(stop);
        task.setOnSucceeded(event -> finished(task));
        task.setOnFailed(event -> failed(task));
        task.start();
    }

    private void stop() {
        if (running != null) {
            running.stop();
        }
    }

    private void finished(MatchSimulation task) {
        if (end(task)) {
            simulated = task.setup();
            result = task.getValue();
            sentence.setText(repeats(result));
            changed.run();
        }
    }

    private void failed(MatchSimulation task) {
        if (end(task)) {
            sentence.setText(form.words().text("match.closerFailed", Arg.text(String.valueOf(task.getException()))));
        }
    }

    /** Takes the bar away; false when a later simulation has begun already. */
    private boolean end(MatchSimulation task) {
        if (running != task) {
            return false;
        }
        running = null;
        bar.progressProperty().unbind();
        row.getChildren().setAll(start, sentence);
        Keyboard.to(start);
        return true;
    }
}
