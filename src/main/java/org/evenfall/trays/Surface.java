package org.evenfall.trays;

/** What is under the trays. */
public enum Surface {
    UNANSWERED,
    STUBBLE_OR_BARE,
    SHORT_CROP,
    TALL_CROP,
    HARD_FLOOR
}
