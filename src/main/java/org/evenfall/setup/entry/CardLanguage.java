package org.evenfall.setup.entry;

/** The language the cab card is written in: the driver's, whatever the program speaks. */
public enum CardLanguage {
    UNANSWERED,
    EN,
    DE,
    FR
}
