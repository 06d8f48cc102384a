package org.evenfall.machine;

/** Which way a lever throws wider: with a higher or with a lower number on its scale. */
public enum Widening {
    /** Not answered yet. */
    UNANSWERED,
    /** A higher number throws wider. */
    HIGHER,
    /** A lower number throws wider. */
    LOWER,
    /** The owner does not know. */
    UNKNOWN
}
