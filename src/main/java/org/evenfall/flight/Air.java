package org.evenfall.flight;

/**
 * The air a granule flies through.
 *
 * @param densityKgPerM3 density, kg/m³
 * @param viscosityPaS dynamic viscosity, Pa s
 */
public record Air(double densityKgPerM3, double viscosityPaS) {

    /** 20 °C, 101 325 Pa. */
    public static final Air STANDARD = new Air(1.204, 1.81e-5);
}
