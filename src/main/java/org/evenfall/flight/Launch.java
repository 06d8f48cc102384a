package org.evenfall.flight;

/**
 * How a granule leaves the vane.
 *
 * @param speedMPerS speed, m/s, at least 0
 * @param angleDeg angle above the horizontal, −90 to 90 degrees
 * @param heightM height over where it lands, m, at least 0
 */
public record Launch(double speedMPerS, double angleDeg, double heightM) {

    /** @throws IllegalArgumentException when a part is out of its range */
    public Launch {
        Ranges.within("speedMPerS", speedMPerS, 0, Double.MAX_VALUE);
        Ranges.within("angleDeg", angleDeg, -90, 90);
        Ranges.within("heightM", heightM, 0, Double.MAX_VALUE);
    }
}
