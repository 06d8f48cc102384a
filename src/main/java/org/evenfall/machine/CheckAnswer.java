package org.evenfall.machine;

/** The outcome of one look at the machine. */
public enum CheckAnswer {
    UNANSWERED,
    GOOD,
    FAILED,
    NOT_FITTED
}
