package org.evenfall.setup.entry;

/** How sieve classes or tray catches were read. */
public enum AmountKind {
    UNANSWERED,
    MASS,
    PERCENT,
    VOLUME,
    HEIGHT
}
