package org.evenfall.reference;

/** Looks on while something long is computed and may end it early. */
@FunctionalInterface
public interface Watch {

    /** Nobody looks on. */
    Watch NOBODY = done -> true;

    /**
     * @param done share done, 0 to 1
     * @return whether to go on
     */
    boolean goOn(double done);
}
