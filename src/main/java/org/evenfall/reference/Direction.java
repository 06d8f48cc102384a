package org.evenfall.reference;

/** Which way to set the machine, compared with the reference's settings. */
public enum Direction {
    AS_IT_IS,
    WIDER,
    NARROWER
}
