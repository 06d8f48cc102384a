package org.evenfall.flight;

/**
 * How far a product is thrown by a disc, by the flight model: for differences between products, no setting.
 *
 * @param outletSpeedMPerS speed at the vane tip, m/s
 * @param medianM landing distance of the median granule, m
 * @param edgeM landing distance of the granule that 84 % of the mass is finer than, m
 * @param standardErrorM standard error of the median distance from the measurements alone, m
 * @param terminalVelocityMPerS terminal velocity of the median granule, m/s
 */
public record Throw(
        double outletSpeedMPerS, double medianM, double edgeM, double standardErrorM, double terminalVelocityMPerS) {}
