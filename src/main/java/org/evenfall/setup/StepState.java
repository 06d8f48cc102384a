package org.evenfall.setup;

/** How a step stands: each shown by shape, word and colour. */
public enum StepState {
    OPEN,
    DONE,
    WARNED,
    STOPPED
}
