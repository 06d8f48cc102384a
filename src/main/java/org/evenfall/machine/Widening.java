package org.evenfall.machine;

/** Which way a lever throws wider: with a higher or with a lower number on its scale. */
public enum Widening {
    UNANSWERED,
    HIGHER,
    LOWER,
    UNKNOWN
}
