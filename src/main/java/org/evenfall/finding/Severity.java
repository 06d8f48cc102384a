package org.evenfall.finding;

/** How serious a finding is, from most to least. */
public enum Severity {
    /** The job must not go on until this is put right (or, where allowed, overridden with a reason). */
    STOP(0),
    /** Goes on the card. */
    WARN(1),
    /** Something that the card still needs. */
    MISSING(2),
    /** Good to know. */
    NOTE(2);

    private final int weight;

    Severity(int weight) {
        this.weight = weight;
    }

    /** Order in a list: the worst is 0. What is missing weighs no more than a note. */
    public int weight() {
        return weight;
    }
}
