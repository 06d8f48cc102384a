package org.evenfall.setup.entry;

/** What the flows in the handbook's opening table count. */
public enum FlowTableBasis {
    UNANSWERED,
    ALL_OUTLETS,
    ONE_OUTLET
}
