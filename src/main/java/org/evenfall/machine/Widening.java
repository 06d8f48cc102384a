package org.evenfall.machine;

/** Whether a higher number on the lever throws wider. */
public enum Widening {
    UNANSWERED,
    HIGHER,
    LOWER,
    UNKNOWN
}
