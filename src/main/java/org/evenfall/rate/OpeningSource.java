package org.evenfall.rate;

/** How the next opening or factor was found. */
public enum OpeningSource {
    /** Linear between two tests that enclose the wanted flow. */
    BETWEEN_MEASURED,
    /** From the handbook's table scaled to the flow caught. */
    TABLE_SCALED,
    /** In proportion to the last test. */
    PROPORTIONAL,
    /** None: the scaled table does not reach the wanted flow. */
    BEYOND_TABLE,
    /** A factor, from the weights caught and shown by the rule of the terminal's handbook. */
    BY_FACTOR
}
