package org.evenfall.granule;

/** What the granules are, as the delivery note says. */
public enum ProductForm {
    /** Not answered yet. */
    UNANSWERED,
    /** Granular urea, 46 % N. */
    GRANULAR_UREA,
    /** Prilled urea, 46 % N. */
    PRILLED_UREA,
    /** Calcium ammonium nitrate, about 27 % N. */
    CALCIUM_AMMONIUM_NITRATE,
    /** Ammonium nitrate. */
    AMMONIUM_NITRATE,
    /** Any other product. */
    OTHER;

    /** Whether its granules are of urea alone. */
    public boolean isUrea() {
        return this == GRANULAR_UREA || this == PRILLED_UREA;
    }
}
