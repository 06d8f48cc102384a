package org.evenfall.setup.entry;

/** What is known of the evenness of the settings used so far. */
public enum TodayEvenness {
    /** Not yet answered. */
    UNANSWERED,
    /** A tray test was made. */
    TESTED,
    /** Only looked at. */
    LOOKED_AT,
    /** Nobody knows. */
    NOT_KNOWN
}
