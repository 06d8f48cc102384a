package org.evenfall.rate;

import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * What the season needs. Null where it cannot be computed from what is known.
 *
 * @param amounts amounts on one hectare
 * @param logistics area, tonnes, bags and loads
 * @param flow speed and flow
 * @param bucket the bucket test
 * @param money costs
 */
public record RatePlan(Amounts amounts, Logistics logistics, Flow flow, Bucket bucket, Money money) {

    /**
     * Amounts on one hectare.
     *
     * @param nitrogenKgPerHa nitrogen, kg/ha
     * @param productKgPerHa product, kg/ha
     * @param unitsPerAcre nitrogen in hundredths of a hundredweight per acre
     */
    public record Amounts(double nitrogenKgPerHa, double productKgPerHa, double unitsPerAcre) {}

    /**
     * Area, tonnes, bags and loads.
     *
     * @param areaHa area, ha
     * @param productTonnes product in all, t
     * @param bags bags, fractional
     * @param bagsToOrder bags rounded up
     * @param hopperLoads hopper loads, fractional
     * @param haPerBag area of one bag, ha
     */
    public record Logistics(
            @Nullable Double areaHa,
            @Nullable Double productTonnes,
            @Nullable Double bags,
            @Nullable Double bagsToOrder,
            @Nullable Double hopperLoads,
            @Nullable Double haPerBag) {}

    /**
     * Speed and flow.
     *
     * @param speedKmPerH forward speed, km/h
     * @param kgPerMin flow of all outlets, kg/min
     * @param outletKgPerMin flow of one outlet, kg/min
     * @param firstOpening opening to start from, by the handbook's table scaled to this density; null with a factor
     */
    public record Flow(
            @Nullable Double speedKmPerH,
            @Nullable Double kgPerMin,
            @Nullable Double outletKgPerMin,
            @Nullable Double firstOpening) {}

    /**
     * The bucket test of one outlet.
     *
     * @param seconds longest offered time whose catch fits the bucket and can be carried, s; null when none does
     * @param kg expected weight in that time, kg
     * @param toleranceKg weights within the tolerance of the rate, kg
     * @param litres its volume, L
     * @param halfMinuteKg expected weight in 30 s, kg
     * @param halfMinuteLitres its volume, L
     */
    public record Bucket(
            @Nullable Double seconds,
            @Nullable Double kg,
            @Nullable Interval toleranceKg,
            @Nullable Double litres,
            @Nullable Double halfMinuteKg,
            @Nullable Double halfMinuteLitres) {}

    /**
     * Costs, in the currency of the prices.
     *
     * @param costPerKgN price of one kg of nitrogen that counts
     * @param otherCostPerKgN the same from the product used before
     * @param parityPricePerT price per tonne at which this product costs the same per kg of nitrogen as the one before
     * @param saving money saved on the area against the product used before; negative: dearer
     */
    public record Money(
            @Nullable Double costPerKgN,
            @Nullable Double otherCostPerKgN,
            @Nullable Double parityPricePerT,
            @Nullable Double saving) {}
}
