package org.evenfall.bench;

/** One piece of work whose time is measured. */
@FunctionalInterface
public interface Work {

    /** Does it once; the result is kept, so that nothing of the work is left out by the compiler. */
    Object once() throws Exception;
}
