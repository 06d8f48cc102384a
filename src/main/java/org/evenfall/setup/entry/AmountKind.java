package org.evenfall.setup.entry;

/** How sieve classes or tray catches are measured. */
public enum AmountKind {
    /** Not yet answered. */
    UNANSWERED,
    /** Weighed. */
    MASS,
    /** As a share of the whole. */
    PERCENT,
    /** In a measuring cylinder. */
    VOLUME,
    /** As the height in a tube. */
    HEIGHT
}
