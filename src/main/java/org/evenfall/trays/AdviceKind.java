package org.evenfall.trays;

/** What to do next. */
public enum AdviceKind {
    /** No test yet: do one. */
    DO_A_TEST,
    /** Noise hides the machine or a tray is spoilt: more runs, type a tray again, or repeat the test as it was. */
    REPEAT_TEST,
    /** The last test was driven in too strong a wind. */
    WAIT_FOR_WIND,
    /** Level or tyres are off, or one side gets less: first level, height and tyres. */
    LEVEL_HEIGHT_TYRES,
    /** The PTO speed is off or not measured, or one side gets less: first the PTO speed. */
    PTO_SPEED,
    /** First guards, vanes, outlets, or a damp product; or one side gets less and the rest is in order. */
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
