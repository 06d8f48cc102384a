package org.evenfall.rate;

/** Where the next opening comes from. */
public enum OpeningSource {
    BETWEEN_MEASURED,
    TABLE_SCALED,
    PROPORTIONAL,
    BEYOND_TABLE
}
