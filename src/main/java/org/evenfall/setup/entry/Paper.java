package org.evenfall.setup.entry;

/** The sheet the card is printed on. */
public enum Paper {
    /** 210 × 148 mm; the one taken where none is chosen. */
    A5_LANDSCAPE,
    /** 148 × 210 mm. */
    A5_PORTRAIT,
    /** 210 × 297 mm. */
    A4,
    /** 8.5 × 11 in. */
    LETTER
}
