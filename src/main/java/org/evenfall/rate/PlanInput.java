package org.evenfall.rate;

import org.evenfall.machine.OpeningTable;
import org.evenfall.rate.RatePlan.Amounts;
import org.jspecify.annotations.Nullable;

/**
 * What a plan is made from; only the rate, the machine and the effectiveness must be known.
 *
 * @param rate wanted rate
 * @param field field and speed
 * @param containers bag, hopper and bucket
 * @param bulkDensityKgPerL bulk density, kg/L
 * @param machine outlets and opening table
 * @param tolerancePercent allowed deviation of the rate, %
 * @param prices prices
 */
public record PlanInput(
        Rate rate,
        Field field,
        Containers containers,
        @Nullable Double bulkDensityKgPerL,
        Outlets machine,
        double tolerancePercent,
        Prices prices) {

    /**
     * Wanted rate.
     *
     * @param productKgPerHa product, kg/ha, above 0
     * @param nitrogenPercent nitrogen share of the product, %, above 0
     */
    public record Rate(double productKgPerHa, double nitrogenPercent) {

        /**
         * Checks the ranges.
         *
         * @throws IllegalArgumentException unless both are above 0
         */
        public Rate {
            if (!(productKgPerHa > 0) || !(nitrogenPercent > 0)) {
                throw new IllegalArgumentException("productKgPerHa and nitrogenPercent must be above 0: "
                        + productKgPerHa + ", " + nitrogenPercent);
            }
        }

        /** The amounts on one hectare. */
        Amounts amounts() {
            double nitrogen = Nutrients.nitrogenKgPerHa(productKgPerHa, nitrogenPercent);
            return new Amounts(
                    nitrogen, productKgPerHa, nitrogen / Nutrients.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE_KG_PER_HA);
        }
    }

    /**
     * Field and speed.
     *
     * @param widthM tramline width, m
     * @param speedKmPerH forward speed, km/h
     * @param areaHa area, ha
     */
    public record Field(
            @Nullable Double widthM,
            @Nullable Double speedKmPerH,
            @Nullable Double areaHa) {}

    /**
     * Bag, hopper and bucket.
     *
     * @param bagKg mass of a bag, kg
     * @param hopperL volume of the hopper, L
     * @param bucketL volume of the largest bucket, L
     */
    public record Containers(
            @Nullable Double bagKg,
            @Nullable Double hopperL,
            @Nullable Double bucketL) {}

    /**
     * Outlets and opening table.
     *
     * @param outlets number of outlets, at least 1
     * @param table opening table scaled to this product, all outlets together; null without one
     */
    public record Outlets(int outlets, @Nullable OpeningTable table) {

        /**
         * Checks the range.
         *
         * @throws IllegalArgumentException when outlets is below 1
         */
        public Outlets {
            if (outlets < 1) {
                throw new IllegalArgumentException("outlets must be at least 1: " + outlets);
            }
        }
    }

    /**
     * Prices.
     *
     * @param pricePerT price of the product per tonne
     * @param otherPricePerT price of the product used before, per tonne
     * @param otherNitrogenPercent its nitrogen share, %
     * @param effectivenessPercent share of this product's nitrogen that counts, %, above 0; 100 when nothing is deducted
     */
    public record Prices(
            @Nullable Double pricePerT,
            @Nullable Double otherPricePerT,
            @Nullable Double otherNitrogenPercent,
            double effectivenessPercent) {

        /**
         * Checks the range.
         *
         * @throws IllegalArgumentException unless effectivenessPercent is above 0
         */
        public Prices {
            if (!(effectivenessPercent > 0)) {
                throw new IllegalArgumentException("effectivenessPercent must be above 0: " + effectivenessPercent);
            }
        }
    }
}
