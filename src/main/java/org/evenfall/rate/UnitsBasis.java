package org.evenfall.rate;

/** What a fertiliser "unit" means to this person: the word is ambiguous by a quarter. */
public enum UnitsBasis {
    /** Not answered yet. */
    UNANSWERED,
    /** One unit is 1 kg/ha. */
    KG_PER_HA,
    /** One unit is a hundredth of a hundredweight (1.12 lb) per acre. */
    HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE
}
