package org.evenfall.machine;

/** How the rate is set on a machine. */
public enum RateSetting {
    /** Not yet answered: counts as an opening by hand. */
    UNANSWERED,
    /** An opening on a scale, by hand. */
    OPENING,
    /** A terminal with a calibration factor, which opens the outlets itself. */
    FACTOR,
    /** A terminal that also weighs the hopper and corrects its factor while spreading. */
    WEIGHING;

    /** Whether the person sets a factor, not an opening. */
    public boolean byFactor() {
        return this == FACTOR || this == WEIGHING;
    }
}
