package org.evenfall.trays;

/** What the CV means in words. */
public enum EvennessVerdict {
    GOOD,
    ACCEPTABLE,
    ADJUST,
    DO_NOT_SPREAD
}
