package org.evenfall.setup.entry;

/** The sheet the card is printed on. */
public enum Paper {
    A5_LANDSCAPE,
    A5_PORTRAIT,
    A4,
    LETTER
}
