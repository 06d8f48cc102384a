package org.evenfall.flight;

/**
 * What one vane of one disc throws: a fan of granules around a mean direction. Directions are as from above, measured from
 * straight behind the machine outward to the side of the disc.
 *
 * @param right it belongs to the right disc, as in the direction of travel
 * @param outletSpeedMPerS speed at the vane tip, horizontal and vertical together, 0.001 to 100 m/s
 * @param directionDeg mean direction, {@value #LOWEST_DIRECTION_DEG} to {@value #HIGHEST_DIRECTION_DEG} degrees; 0 straight
 *     behind, 90 square to the side
 * @param spreadDeg standard deviation of the direction, 0.001 to 60 degrees: a normal distribution cut at {@value #CUT}
 *     standard deviations
 * @param takeOffDeg angle above the horizontal, −30 to 45 degrees
 * @param share share of the whole stream, 0 to 1
 */
public record Fan(
        boolean right,
        double outletSpeedMPerS,
        double directionDeg,
        double spreadDeg,
        double takeOffDeg,
        double share) {

    /** Where the normal distribution of the direction is cut, standard deviations. Assumption: 0.3 % lie beyond. */
    public static final double CUT = 3;

    /** Assumption: no disc throws its mean direction further inward. */
    static final double LOWEST_DIRECTION_DEG = -90;

    /** Assumption: no disc throws its mean direction further to the front. */
    static final double HIGHEST_DIRECTION_DEG = 150;

    /** @throws IllegalArgumentException when a part is out of its range */
    public Fan {
        Ranges.within("outletSpeedMPerS", outletSpeedMPerS, 1e-3, 100);
        Ranges.within("directionDeg", directionDeg, LOWEST_DIRECTION_DEG, HIGHEST_DIRECTION_DEG);
        Ranges.within("spreadDeg", spreadDeg, 1e-3, 60);
        Ranges.within("takeOffDeg", takeOffDeg, -30, 45);
        Ranges.within("share", share, 0, 1);
    }

    /** −1 for the left disc, 1 for the right. */
    int sign() {
        return right ? 1 : -1;
    }
}
