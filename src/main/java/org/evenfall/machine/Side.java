package org.evenfall.machine;

/** Left or right, seen in the direction of travel. */
public enum Side {
    UNANSWERED,
    LEFT,
    RIGHT
}
