package org.evenfall.flight;

/**
 * One granule, taken as a smooth sphere.
 *
 * @param diameterMm diameter, mm
 * @param densityKgPerM3 apparent density, kg/m³
 */
public record Granule(double diameterMm, double densityKgPerM3) {

    public Granule {
        if (!(diameterMm > 0 && densityKgPerM3 > 0)) {
            throw new IllegalArgumentException(
                    "diameter and density must be above 0: " + diameterMm + " mm, " + densityKgPerM3 + " kg/m³");
        }
    }
}
