package org.evenfall.reference;

/** Follows a long computation and may end it early. */
@FunctionalInterface
public interface ProgressMonitor {

    /** Never ends the computation. */
    ProgressMonitor NONE = done -> true;

    /**
     * Called from time to time during the computation.
     *
     * @param done share done, 0 to 1
     * @return whether to continue
     */
    boolean shouldContinue(double done);
}
