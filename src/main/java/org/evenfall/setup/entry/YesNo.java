package org.evenfall.setup.entry;

/** An answer to a plain question. */
public enum YesNo {
    UNANSWERED,
    YES,
    NO
}
