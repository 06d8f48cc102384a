package org.evenfall.machine;

/** The outcome of one item of the machine check. */
public enum CheckAnswer {
    /** Not checked yet. */
    UNANSWERED,
    /** In order. */
    GOOD,
    /** Not in order. */
    FAILED,
    /** The machine has no such part. */
    NOT_FITTED
}
