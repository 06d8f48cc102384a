package org.evenfall.flight;

/**
 * How a granule leaves a straight vane.
 *
 * @param timeS time from rest at the drop point to the rim, s
 * @param radialMPerS speed outward along the radius, m/s
 * @param tangentialMPerS speed along the tangent, m/s
 * @param angleFromTangentDeg direction, degrees from the tangent outward
 */
public record VaneOutlet(double timeS, double radialMPerS, double tangentialMPerS, double angleFromTangentDeg) {

    /** Speed over the ground, m/s. */
    public double speedMPerS() {
        return Math.hypot(radialMPerS, tangentialMPerS);
    }
}
