package org.evenfall.flight;

/** How the passes follow each other. Back and forth: neighbours meet with the same side; round and round: with opposite sides. */
public enum DrivingPattern {
    UNANSWERED,
    BACK_AND_FORTH,
    ROUND_AND_ROUND
}
