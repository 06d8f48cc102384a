package org.evenfall.rate;

/** How the next opening was found. */
public enum OpeningSource {
    BETWEEN_MEASURED,
    TABLE_SCALED,
    PROPORTIONAL,
    BEYOND_TABLE
}
