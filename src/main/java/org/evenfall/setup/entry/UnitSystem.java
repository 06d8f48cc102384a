package org.evenfall.setup.entry;

/** Units that are offered first; every entry takes the others too. */
public enum UnitSystem {
    /** Not chosen: metric. */
    UNANSWERED,
    /** Metres, kilograms, hectares. */
    METRIC,
    /** Feet, pounds, acres. */
    ACRE
}
