package org.evenfall.setup.entry;

/** How the product flows. */
public enum Condition {
    /** Not yet answered. */
    UNANSWERED,
    /** It flows freely. */
    FREE_FLOWING,
    /** It is slightly damp. */
    SLIGHTLY_DAMP,
    /** It is caked. */
    CAKED
}
