package org.evenfall.trays;

/** What is under the trays. */
public enum Surface {
    /** Not stated. */
    UNANSWERED,
    /** Stubble or bare soil. */
    STUBBLE_OR_BARE,
    /** A short crop. */
    SHORT_CROP,
    /** A tall crop. */
    TALL_CROP,
    /** A hard floor, from which granules bounce. */
    HARD_FLOOR
}
