package org.evenfall.finding;

/** How serious a finding is, from most to least. */
public enum Severity {
    /** The job must not go on until this is put right (or, where allowed, overridden with a reason). */
    STOP,
    /** Goes on the card. */
    WARN,
    /** Good to know. */
    NOTE
}
