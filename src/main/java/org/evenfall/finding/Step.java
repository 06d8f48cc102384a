package org.evenfall.finding;

/** The steps of the job in their fixed order. */
public enum Step {
    START,
    PRODUCT,
    MATCH,
    MACHINE,
    HEIGHT,
    RATE,
    TRAYS,
    CARD
}
