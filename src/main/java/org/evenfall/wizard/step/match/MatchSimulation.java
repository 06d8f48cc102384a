package org.evenfall.wizard.step.match;

import javafx.concurrent.Task;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.ProgressMonitor;
import org.evenfall.setup.AssessOptions;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** Repeats the measurements of a setup many more times in simulation, on a thread of its own. */
final class MatchSimulation extends Task<@Nullable MatchResult> {

    /** So many repeats; the usual assessment makes a few hundred. */
    static final int REDRAWS = 200_000;

    /** Computes the match of a setup. */
    @FunctionalInterface
    interface Computation {
        /** Null when the setup has no match yet. */
        @Nullable
        MatchResult compute(Setup setup, ProgressMonitor progress);
    }

    private final Setup setup;
    private final Computation computation;
    private volatile boolean stopped;

    MatchSimulation(Setup setup, Computation computation) {
        this.setup = setup;
        this.computation = computation;
        updateProgress(0, 1);
    }

    /** The assessment with all repeats. */
    static @Nullable MatchResult assess(Setup setup, ProgressMonitor progress) {
        return Assessor.assess(setup, AssessOptions.closer(REDRAWS, progress)).match();
    }

    /** The setup that is simulated. */
    Setup setup() {
        return setup;
    }

    /** Ends the simulation with the repeats made so far; unlike {@link #cancel}, they are the result. */
    void stop() {
        stopped = true;
    }

    /** Begins on a thread of its own. */
    void start() {
        Thread thread = new Thread(this, "evenfall-match");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    protected @Nullable MatchResult call() {
        return computation.compute(setup, done -> {
            updateProgress(done, 1);
            return !stopped && !isCancelled();
        });
    }
}
