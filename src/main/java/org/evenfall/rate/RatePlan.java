package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * What the season needs.
 *
 * @param nitrogenKgPerHa nitrogen, kg/ha
 * @param productKgPerHa product, kg/ha
 * @param unitsPerAcre nitrogen in hundredths of a hundredweight per acre
 * @param speedKmPerH forward speed
 * @param areaHa area
 * @param productTonnes product in all, t
 * @param bags bags, fractional
 * @param bagsToOrder bags rounded up
 * @param hopperLoads hopper loads, fractional
 * @param haPerBag area of one bag, ha
 * @param flowKgPerMin flow of all outlets, kg/min
 * @param flowPerOutletKgPerMin flow of one outlet, kg/min
 * @param bucketSeconds time of the bucket test that fits the bucket, s
 * @param bucketKg expected weight from one outlet in that time, kg
 * @param bucketLowKg lower end of the tolerance, kg
 * @param bucketHighKg upper end, kg
 * @param bucketL its volume, L
 * @param bucket30Kg expected weight from one outlet in 30 s, kg
 * @param bucket30L its volume, L
 * @param firstOpening opening to start from, by the handbook table scaled to this density
 * @param costPerKgN price of one kg of nitrogen
 * @param otherCostPerKgN the same from the product used before
 * @param parityPricePerT price per tonne at which this product costs the same per kg of nitrogen as the one before
 * @param saving money saved on the area against the product used before; negative: dearer
 */
public record RatePlan(
        double nitrogenKgPerHa,
        double productKgPerHa,
        @Nullable Double unitsPerAcre,
        @Nullable Double speedKmPerH,
        @Nullable Double areaHa,
        @Nullable Double productTonnes,
        @Nullable Double bags,
        @Nullable Double bagsToOrder,
        @Nullable Double hopperLoads,
        @Nullable Double haPerBag,
        @Nullable Double flowKgPerMin,
        @Nullable Double flowPerOutletKgPerMin,
        @Nullable Double bucketSeconds,
        @Nullable Double bucketKg,
        @Nullable Double bucketLowKg,
        @Nullable Double bucketHighKg,
        @Nullable Double bucketL,
        @Nullable Double bucket30Kg,
        @Nullable Double bucket30L,
        @Nullable Double firstOpening,
        @Nullable Double costPerKgN,
        @Nullable Double otherCostPerKgN,
        @Nullable Double parityPricePerT,
        @Nullable Double saving) {}
