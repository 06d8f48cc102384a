package org.evenfall.trays;

/**
 * Something about machine or product that comes before a lever.
 *
 * @param kind what to do about it
 * @param evidence what is known, with its figure
 * @param seen it was looked at and is not in order; false: it was not looked at yet
 */
public record KnownFault(AdviceKind kind, AdviceReason evidence, boolean seen) {

    /** Looked at, and not in order. */
    public static KnownFault seen(AdviceKind kind, AdviceReason evidence) {
        return new KnownFault(kind, evidence, true);
    }

    /** Not looked at yet, but asked for before a lever is moved. */
    public static KnownFault unseen(AdviceKind kind, AdviceReason.Kind evidence) {
        return new KnownFault(kind, AdviceReason.of(evidence), false);
    }
}
