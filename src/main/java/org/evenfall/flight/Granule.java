package org.evenfall.flight;

/**
 * One granule, taken as a smooth sphere.
 *
 * @param diameterMm diameter, mm
 * @param densityKgPerM3 apparent density, kg/m³
 */
public record Granule(double diameterMm, double densityKgPerM3) {}
