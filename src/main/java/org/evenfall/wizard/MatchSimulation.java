package org.evenfall.wizard;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import org.evenfall.finding.Arg;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.AssessOptions;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** Redoes the measurements many more times in simulation, beside the window, with how far it is and a way to stop. */
final class MatchSimulation {

    static final int REDRAWS = 200_000;

    private final Form form;
    private final Runnable shown;
    private final HBox row = new HBox();
    private final ProgressBar bar = new ProgressBar(0);
    private final Label told = new Label();
    private final Button start;
    private final Button stop;
    private AtomicBoolean running = new AtomicBoolean();
    private @Nullable Setup of;
    private @Nullable MatchResult closer;

    /** @param shown called when a closer result is there */
    MatchSimulation(Form form, Runnable shown) {
        this.form = form;
        this.shown = shown;
        row.getStyleClass().add("closer");
        start = form.button("match.closer", this::run);
        start.setId("match.closer");
        stop = form.button("match.closerStop", () -> running.set(false));
        stop.setId("match.closerStop");
        bar.setAccessibleText(form.words().text("match.closerBar"));
        told.setWrapText(true);
        row.getChildren().setAll(start, told);
    }

    Node node() {
        return row;
    }

    /** The match to show: the closer one while it belongs to the setup as it stands. */
    @Nullable
    MatchResult match() {
        MatchResult usual = form.model().assessment().match();
        if (closer != null && form.model().setup().equals(of)) {
            return closer;
        }
        told.setText(repeats(usual));
        return usual;
    }

    private String repeats(@Nullable MatchResult match) {
        return match == null || match.redraws() == 0
                ? ""
                : form.words().text("match.redrawn", Arg.count(match.redraws()));
    }

    private void run() {
        Setup setup = form.model().setup();
        AtomicBoolean mine = new AtomicBoolean(true);
        running.set(false);
        running = mine;
        bar.setProgress(0);
        row.getChildren().setAll(bar, stop);
        stop.requestFocus();
        Supplier<MatchResult> work = () -> Assessor.assess(setup, AssessOptions.closer(REDRAWS, done -> {
                    Platform.runLater(() -> bar.setProgress(done));
                    return mine.get();
                }))
                .match();
        Thread thread = new Thread(
                () -> {
                    MatchResult result = work.get();
                    Platform.runLater(() -> done(setup, result));
                },
                "evenfall-match");
        thread.setDaemon(true);
        thread.start();
    }

    private void done(Setup setup, @Nullable MatchResult result) {
        of = setup;
        closer = result;
        told.setText(repeats(result));
        row.getChildren().setAll(start, told);
        start.requestFocus();
        shown.run();
    }
}
