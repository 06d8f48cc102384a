package org.evenfall.flight;

/**
 * One granule.
 *
 * @param diameterMm diameter of the sphere of the same volume, mm, above 0
 * @param densityKgPerM3 apparent density, kg/m³, above 0
 * @param shapeFactor drag of the granule over the drag of a smooth sphere, 0.5 to 5; 1 is a smooth sphere, a rough or
 *     angular granule lies above
 */
public record Granule(double diameterMm, double densityKgPerM3, double shapeFactor) {

    public Granule {
        if (!(diameterMm > 0 && densityKgPerM3 > 0)) {
            throw new IllegalArgumentException(
                    "diameter and density must be above 0: " + diameterMm + " mm, " + densityKgPerM3 + " kg/m³");
        }
        if (!(shapeFactor >= 0.5 && shapeFactor <= 5)) {
            throw new IllegalArgumentException("shapeFactor must be 0.5 to 5: " + shapeFactor);
        }
    }

    /** A smooth sphere. */
    public Granule(double diameterMm, double densityKgPerM3) {
        this(diameterMm, densityKgPerM3, 1);
    }
}
