package org.evenfall.reference;

/** What the closest tested product means for its settings. */
public enum Verdict {
    /** The settings hold. */
    HOLD,
    /** The settings are a start for the tray test. */
    HOLD_AS_START,
    /** The settings are a first guess only. */
    FIRST_GUESS_ONLY,
    /** The tramline width is out of reach of the product. */
    NOT_AT_THIS_WIDTH,
    /** There is nothing to compare with. */
    NO_REFERENCE
}
