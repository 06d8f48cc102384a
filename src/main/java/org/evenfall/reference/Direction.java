package org.evenfall.reference;

/** Which way to set the machine, compared with the reference's settings. */
public enum Direction {
    /** No change. */
    AS_IT_IS,
    /** Throw wider: the new product falls short. */
    WIDER,
    /** Throw narrower: the new product is thrown further. */
    NARROWER
}
