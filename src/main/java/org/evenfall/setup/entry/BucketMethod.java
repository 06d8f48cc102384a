package org.evenfall.setup.entry;

/** How the flow of an outlet was measured. */
public enum BucketMethod {
    /** Not answered: counts as caught for a time. */
    UNANSWERED,
    /** The outlet was open for a time; what came was weighed. */
    CAUGHT_FOR_TIME,
    /** A known weight ran through; it was timed. */
    KNOWN_WEIGHT
}
