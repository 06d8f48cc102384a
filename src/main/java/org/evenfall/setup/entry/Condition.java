package org.evenfall.setup.entry;

/** How the product runs out of the bag. */
public enum Condition {
    UNANSWERED,
    FREE_FLOWING,
    SLIGHTLY_DAMP,
    CAKED
}
