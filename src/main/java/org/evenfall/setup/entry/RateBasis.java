package org.evenfall.setup.entry;

/** How the wanted rate is given. */
public enum RateBasis {
    /** Not yet answered. */
    UNANSWERED,
    /** As nitrogen. */
    NITROGEN,
    /** As product. */
    PRODUCT
}
