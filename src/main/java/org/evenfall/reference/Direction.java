package org.evenfall.reference;

/** Which way the machine should be set against the reference. */
public enum Direction {
    AS_IT_IS,
    WIDER,
    NARROWER
}
