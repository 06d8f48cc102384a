package org.evenfall.flight;

/**
 * How one vane of a disc is set.
 *
 * @param radiusM centre of the disc to the tip, m, above {@value #SHORTEST_M}, at most {@value #LONGEST_M}
 * @param pitchM how far the vane is set ahead of the radius it is parallel to, m, negative: behind; less than a quarter of
 *     the radius either way
 */
public record VaneSetting(double radiusM, double pitchM) {

    /** Radii of discs, m, this one excluded. Assumption: smaller discs throw no tramline width. */
    static final double SHORTEST_M = 0.1;

    /** Longest radius, m. Assumption: no disc is larger. */
    static final double LONGEST_M = 1;

    /** Assumption: up to here the granule, which falls on at 0.3 of the radius, meets the vane. */
    static final double LARGEST_PITCH_SHARE = 0.25;

    /** @throws IllegalArgumentException when a part is out of its range */
    public VaneSetting {
        if (!(radiusM > SHORTEST_M && radiusM <= LONGEST_M)) {
            throw new IllegalArgumentException(
                    "radiusM must be above " + SHORTEST_M + ", at most " + LONGEST_M + ": " + radiusM);
        }
        if (!(Math.abs(pitchM) < LARGEST_PITCH_SHARE * radiusM)) {
            throw new IllegalArgumentException(
                    "pitchM must be within " + LARGEST_PITCH_SHARE + " of the radius " + radiusM + ": " + pitchM);
        }
    }
}
