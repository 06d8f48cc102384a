package org.evenfall.setup.entry;

/** What the flows of the handbook's opening table count. */
public enum FlowTableBasis {
    /** Not yet answered. */
    UNANSWERED,
    /** All outlets together. */
    ALL_OUTLETS,
    /** One outlet. */
    ONE_OUTLET
}
