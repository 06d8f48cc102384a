package org.evenfall.flight;

/** How the passes follow each other. */
public enum DrivingPattern {
    /** Not known yet. */
    UNANSWERED,
    /** Each pass the other way: neighbours meet with the same side. */
    BACK_AND_FORTH,
    /** All passes the same way: neighbours meet with opposite sides. */
    ROUND_AND_ROUND
}
