package org.evenfall.flight;

import org.evenfall.granule.SizeDistribution;

/**
 * A product and how a disc throws it.
 *
 * @param sizes size distribution of the product
 * @param particleDensityKgPerM3 apparent density of a granule, kg/m³, above 0
 * @param outletSpeedMPerS speed at the vane tip, m/s, above 0
 * @param heightM height of the discs over the crop, m, above 0
 */
public record ThrowConditions(
        SizeDistribution sizes, double particleDensityKgPerM3, double outletSpeedMPerS, double heightM) {

    /** @throws IllegalArgumentException when a number is not above 0 */
    public ThrowConditions {
        Ranges.positive("particleDensityKgPerM3", particleDensityKgPerM3);
        Ranges.positive("outletSpeedMPerS", outletSpeedMPerS);
        Ranges.positive("heightM", heightM);
    }
}
