package org.evenfall.rate;

import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/**
 * What a plan is made from; only the rates must be there.
 *
 * @param nitrogenKgPerHa nitrogen, kg/ha
 * @param productKgPerHa product, kg/ha
 * @param nitrogenPercent nitrogen share, %
 * @param widthM tramline width, m
 * @param speedKmPerH forward speed
 * @param areaHa area
 * @param bagKg mass of a bag
 * @param hopperL hopper volume
 * @param bucketL largest bucket
 * @param bulkDensityKgPerL bulk density
 * @param outlets number of outlets, at least 1
 * @param tolerancePercent allowed deviation of the rate
 * @param table opening table scaled to this product, all outlets together
 * @param pricePerT price
 * @param otherPricePerT price of the product used before
 * @param otherNitrogenPercent its nitrogen share
 * @param effectivenessPercent share of this product's nitrogen counted on, 100 when nothing is deducted
 */
public record PlanInput(
        double nitrogenKgPerHa,
        double productKgPerHa,
        double nitrogenPercent,
        @Nullable Double widthM,
        @Nullable Double speedKmPerH,
        @Nullable Double areaHa,
        @Nullable Double bagKg,
        @Nullable Double hopperL,
        @Nullable Double bucketL,
        @Nullable Double bulkDensityKgPerL,
        int outlets,
        double tolerancePercent,
        @Nullable OpeningTable table,
        @Nullable Double pricePerT,
        @Nullable Double otherPricePerT,
        @Nullable Double otherNitrogenPercent,
        double effectivenessPercent) {

    public PlanInput {
        if (!(nitrogenKgPerHa > 0) || !(productKgPerHa > 0) || !(nitrogenPercent > 0) || outlets < 1) {
            throw new IllegalArgumentException("rates, nitrogen share and outlets must be above 0: " + nitrogenKgPerHa
                    + ", " + productKgPerHa + ", " + nitrogenPercent + ", " + outlets);
        }
    }
}
