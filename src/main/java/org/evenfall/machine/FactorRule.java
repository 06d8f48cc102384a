package org.evenfall.machine;

/** How a terminal's handbook computes the next calibration factor from a catch. */
public enum FactorRule {
    /** Not yet answered. */
    UNANSWERED,
    /** Next factor = old factor × weight caught ÷ weight shown. */
    CAUGHT_OVER_SHOWN,
    /** Next factor = old factor × weight shown ÷ weight caught. */
    SHOWN_OVER_CAUGHT
}
