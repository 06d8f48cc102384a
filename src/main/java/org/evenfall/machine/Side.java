package org.evenfall.machine;

/** Left or right in the direction of travel. */
public enum Side {
    /** Not answered yet. */
    UNANSWERED,
    /** Left. */
    LEFT,
    /** Right. */
    RIGHT
}
