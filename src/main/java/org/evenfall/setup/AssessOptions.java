package org.evenfall.setup;

/**
 * How much simulation goes into an assessment.
 *
 * @param seed seed of the simulated repeats
 * @param redraws how many times the measurements are redone, at least 1
 */
public record AssessOptions(long seed, int redraws) {

    /** The same for everyone, so that the same setup gives the same figures. */
    public static final AssessOptions USUAL = new AssessOptions(20270401, 400);
}
