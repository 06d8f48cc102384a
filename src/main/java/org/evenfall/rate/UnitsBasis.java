package org.evenfall.rate;

/** What a fertiliser "unit" means to this person: the word is ambiguous by a quarter. */
public enum UnitsBasis {
    UNANSWERED,
    KG_PER_HA,
    HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE
}
