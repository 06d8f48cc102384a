package org.evenfall.setup.entry;

/** An answer to a plain question. */
public enum YesNo {
    /** Not yet answered. */
    UNANSWERED,
    /** Yes. */
    YES,
    /** No. */
    NO
}
