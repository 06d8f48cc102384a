package org.evenfall.reference;

/** What the closest tested product means for its settings. */
public enum Verdict {
    HOLD,
    HOLD_AS_START,
    FIRST_GUESS_ONLY,
    NOT_AT_THIS_WIDTH,
    NO_REFERENCE
}
