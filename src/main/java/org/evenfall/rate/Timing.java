package org.evenfall.rate;

/** Error of a time taken by hand. */
public final class Timing {

    /** Standard deviation of a time taken by hand, start and stop together, s. Assumption: reaction and the shutter's travel. */
    public static final double ERROR_S = 0.4;

    /** Assumption: below this the timing error is more than half of the usual tolerance of 5 %, s. */
    public static final double SHORT_S = 15;

    private Timing() {}

    /**
     * Standard deviation as a share of the time.
     *
     * @throws IllegalArgumentException unless the time is above 0
     */
    public static double errorShare(double timeS) {
        if (!(timeS > 0)) {
            throw new IllegalArgumentException("timeS must be above 0: " + timeS);
        }
        return ERROR_S / timeS;
    }
}
