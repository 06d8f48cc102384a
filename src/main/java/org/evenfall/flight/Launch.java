package org.evenfall.flight;

/**
 * How a granule leaves the vane.
 *
 * @param speedMPerS speed, m/s
 * @param angleDeg angle above the horizontal, °
 * @param heightM height over where it lands, m
 */
public record Launch(double speedMPerS, double angleDeg, double heightM) {}
