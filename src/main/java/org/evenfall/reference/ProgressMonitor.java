package org.evenfall.reference;

/** Looks on while something long is computed and may end it early. */
@FunctionalInterface
public interface ProgressMonitor {

    /** Nobody looks on. */
    ProgressMonitor NONE = done -> true;

    /**
     * @param done share done, 0 to 1
     * @return whether to go on
     */
    boolean shouldContinue(double done);
}
