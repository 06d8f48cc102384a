package org.evenfall.flight;

/**
 * The air a granule flies through.
 *
 * @param densityKgPerM3 density, kg/m³, above 0
 * @param viscosityPaS dynamic viscosity, Pa s, above 0
 */
public record Air(double densityKgPerM3, double viscosityPaS) {

    /** 20 °C, 101 325 Pa. Source (from memory): common tables of the properties of dry air. */
    public static final Air STANDARD = new Air(1.204, 1.81e-5);

    /** @throws IllegalArgumentException when a part is not above 0 */
    public Air {
        Ranges.positive("densityKgPerM3", densityKgPerM3);
        Ranges.positive("viscosityPaS", viscosityPaS);
    }
}
