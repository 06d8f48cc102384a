package org.evenfall.machine;

/** The outcome of one item of the machine check. */
public enum CheckAnswer {
    UNANSWERED,
    GOOD,
    FAILED,
    NOT_FITTED
}
