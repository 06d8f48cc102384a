package org.evenfall.machine;

/** Left or right in the direction of travel. */
public enum Side {
    UNANSWERED,
    LEFT,
    RIGHT
}
