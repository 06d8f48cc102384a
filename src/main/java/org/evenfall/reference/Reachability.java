package org.evenfall.reference;

/** Whether the product can be thrown far enough for the tramline width, by the model; only a tray test decides. */
public enum Reachability {
    /** The widest reachable width is at least the tramline width. */
    YES,
    /** The tramline width is wider, but within the error of measurements and model. */
    DOUBTFUL,
    /** The tramline width is wider by more than that error. */
    PROBABLY_NOT
}
