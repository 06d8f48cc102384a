package org.evenfall.setup.entry;

/** How the wanted rate was given. */
public enum RateBasis {
    UNANSWERED,
    NITROGEN,
    PRODUCT
}
