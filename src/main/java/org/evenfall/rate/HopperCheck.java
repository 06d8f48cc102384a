package org.evenfall.rate;

/**
 * Weight used against area done.
 *
 * @param kgPerHa rate found
 * @param deviationPercent from the wanted rate, %
 */
public record HopperCheck(double kgPerHa, double deviationPercent) {}
