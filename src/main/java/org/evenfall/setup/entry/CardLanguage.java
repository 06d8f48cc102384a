package org.evenfall.setup.entry;

/** The language of the cab card, whatever the language of the program. */
public enum CardLanguage {
    /** Not yet answered: the language of the program. */
    UNANSWERED,
    /** English. */
    EN,
    /** German. */
    DE,
    /** French. */
    FR
}
