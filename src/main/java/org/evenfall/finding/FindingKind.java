package org.evenfall.finding;

/** What kind of thing a finding reports. */
public enum FindingKind {
    /** The job must not go on until this is put right (or, where allowed, overridden with a reason). */
    STOP(0),
    /** Goes on the card. */
    WARNING(1),
    /** Something that the card still needs. */
    MISSING(2),
    /** Good to know. */
    NOTE(2);

    private final int weight;

    FindingKind(int weight) {
        this.weight = weight;
    }

    /** Order in a list: the worst is 0. What is missing weighs no more than a note. */
    public int weight() {
        return weight;
    }
}
