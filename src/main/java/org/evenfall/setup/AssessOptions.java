package org.evenfall.setup;

import org.evenfall.reference.ProgressMonitor;

/**
 * How much simulation goes into an assessment.
 *
 * @param seed seed of the simulated repeats
 * @param redraws how many times the measurements are redone, at least 1
 * @param watch follows the simulation and may end it early
 */
public record AssessOptions(long seed, int redraws, ProgressMonitor watch) {

    /** @throws IllegalArgumentException when there is not one redraw */
    public AssessOptions {
        if (redraws < 1) {
            throw new IllegalArgumentException("redraws must be at least 1: " + redraws);
        }
    }

    /** The same for everyone, so that the same setup gives the same figures. */
    public static final AssessOptions USUAL = new AssessOptions(20270401, 400, ProgressMonitor.NONE);

    /** The usual with more simulated repeats and a monitor. */
    public static AssessOptions closer(int redraws, ProgressMonitor watch) {
        return new AssessOptions(USUAL.seed(), redraws, watch);
    }
}
