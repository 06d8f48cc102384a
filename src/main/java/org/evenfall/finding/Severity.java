package org.evenfall.finding;

/** How much a finding weighs; the order is from worst to least. */
public enum Severity {
    /** The job must not go on until this is put right (or, where allowed, overridden with a reason). */
    STOP,
    /** Goes on the card. */
    WARN,
    /** Good to know. */
    NOTE
}
