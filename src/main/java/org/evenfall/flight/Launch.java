package org.evenfall.flight;

/**
 * How a granule leaves the vane.
 *
 * @param speedMPerS speed, m/s
 * @param angleDeg angle above the horizontal, °
 * @param heightM height over where it lands, m
 */
public record Launch(double speedMPerS, double angleDeg, double heightM) {

    public Launch {
        if (!(speedMPerS >= 0 && angleDeg >= -90 && angleDeg <= 90 && heightM >= 0)) {
            throw new IllegalArgumentException("speed and height at least 0, angle -90 to 90 degrees: " + speedMPerS
                    + ", " + angleDeg + ", " + heightM);
        }
    }
}
