package org.evenfall.trays;

/** What to do next. */
public enum AdviceKind {
    DO_A_TEST,
    REPEAT_TEST,
    WAIT_FOR_WIND,
    LEVEL_HEIGHT_TYRES,
    PTO_SPEED,
    OUTLETS_AND_VANES,
    MOVE_LEVER,
    KEEP,
    CANNOT_TELL_BETTER,
    NO_LEVER_LEFT,
    CONFIRM_DIRECTION
}
