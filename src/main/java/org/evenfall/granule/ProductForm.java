package org.evenfall.granule;

/** What the granules are, as the delivery note says. */
public enum ProductForm {
    UNANSWERED,
    GRANULAR_UREA,
    PRILLED_UREA,
    CALCIUM_AMMONIUM_NITRATE,
    AMMONIUM_NITRATE,
    OTHER
}
