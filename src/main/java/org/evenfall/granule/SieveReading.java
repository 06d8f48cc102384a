package org.evenfall.granule;

/** Where a figure of a sieve analysis was read. */
public enum SieveReading {
    /** On the measured sieve curve, linear in size between two apertures. */
    CURVE,
    /** On the fitted log-normal distribution, since the sieves do not enclose it. */
    FIT
}
