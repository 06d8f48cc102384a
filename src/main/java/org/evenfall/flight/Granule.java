package org.evenfall.flight;

/**
 * One granule.
 *
 * @param diameterMm diameter of the sphere of the same volume, mm, above 0
 * @param densityKgPerM3 apparent density, kg/m³, above 0
 * @param shapeFactor drag of the granule over the drag of a smooth sphere, {@value #LEAST_SHAPE_FACTOR} to
 *     {@value #MOST_SHAPE_FACTOR}; 1 is a smooth sphere, a rough or angular granule lies above
 */
public record Granule(double diameterMm, double densityKgPerM3, double shapeFactor) {

    /** Assumption: nothing round drags less. */
    static final double LEAST_SHAPE_FACTOR = 0.5;

    /** Assumption: no granule drags more. */
    static final double MOST_SHAPE_FACTOR = 5;

    /** @throws IllegalArgumentException when a part is out of its range */
    public Granule {
        Ranges.positive("diameterMm", diameterMm);
        Ranges.positive("densityKgPerM3", densityKgPerM3);
        Ranges.within("shapeFactor", shapeFactor, LEAST_SHAPE_FACTOR, MOST_SHAPE_FACTOR);
    }

    /** A smooth sphere. */
    public Granule(double diameterMm, double densityKgPerM3) {
        this(diameterMm, densityKgPerM3, 1);
    }
}
