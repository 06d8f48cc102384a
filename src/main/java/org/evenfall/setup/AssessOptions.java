package org.evenfall.setup;

import org.evenfall.reference.Watch;

/**
 * How much simulation goes into an assessment.
 *
 * @param seed seed of the simulated repeats
 * @param redraws how many times the measurements are redone, at least 1
 * @param watch looks on and may end the simulation early
 */
public record AssessOptions(long seed, int redraws, Watch watch) {

    /** The same for everyone, so that the same setup gives the same figures. */
    public static final AssessOptions USUAL = new AssessOptions(20270401, 400, Watch.NOBODY);

    /** The usual with more simulated repeats and somebody looking on. */
    public static AssessOptions closer(int redraws, Watch watch) {
        return new AssessOptions(USUAL.seed(), redraws, watch);
    }
}
