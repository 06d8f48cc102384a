package org.evenfall.trays;

/** What to do next. */
public enum AdviceKind {
    /** No test yet: do one. */
    DO_A_TEST,
    /** Noise hides the machine: repeat the test with the same settings. */
    REPEAT_TEST,
    /** The last test was driven in too strong a wind. */
    WAIT_FOR_WIND,
    /** One side gets less: first level, height and tyres. */
    LEVEL_HEIGHT_TYRES,
    /** One side gets less, level is in order: first the shaft speed. */
    PTO_SPEED,
    /** One side gets less, level and shaft speed are in order: first outlets and vanes. */
    OUTLETS_AND_VANES,
    /** Move a lever. */
    MOVE_LEVER,
    /** The field is even. */
    KEEP,
    /** No move is expected to be better. */
    CANNOT_TELL_BETTER,
    /** No lever, or none with room to move. */
    NO_LEVER_LEFT,
    /** The tests contradict the owner's direction of a lever. */
    CONFIRM_DIRECTION
}
