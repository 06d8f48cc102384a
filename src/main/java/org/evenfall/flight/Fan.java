package org.evenfall.flight;

/**
 * What one vane of one disc throws: a fan of granules around a mean direction. Directions are seen from above, measured
 * from straight behind the machine outward to the side of the disc.
 *
 * @param right it belongs to the right disc, seen in the direction of travel
 * @param outletSpeedMPerS horizontal and vertical together: speed at the vane tip, m/s, above 0, at most 100
 * @param directionDeg mean direction, degrees, −90 to 150; 0 straight behind, 90 square to the side
 * @param spreadDeg standard deviation of the direction, degrees, above 0, at most 60: a normal distribution cut at
 *     {@value #CUT} standard deviations
 * @param takeOffDeg angle above the horizontal, degrees, −30 to 45
 * @param share share of the whole stream, 0 to 1
 */
public record Fan(
        boolean right,
        double outletSpeedMPerS,
        double directionDeg,
        double spreadDeg,
        double takeOffDeg,
        double share) {

    /** Where the normal distribution of the direction is cut, standard deviations. */
    public static final double CUT = 3;

    public Fan {
        within("outletSpeedMPerS", outletSpeedMPerS, 1e-3, 100);
        within("directionDeg", directionDeg, -90, 150);
        within("spreadDeg", spreadDeg, 1e-3, 60);
        within("takeOffDeg", takeOffDeg, -30, 45);
        within("share", share, 0, 1);
    }

    private static void within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be " + low + " to " + high + ": " + value);
        }
    }

    /** −1 for the left disc, 1 for the right. */
    int sign() {
        return right ? 1 : -1;
    }
}
