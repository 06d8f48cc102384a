package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * What one pass over a field took, against what was planned.
 *
 * @param areaHa area spread, ha
 * @param productKg product drawn for it, kg
 * @param productKgPerHa product, kg/ha
 * @param nitrogenKgPerHa nitrogen, kg/ha; null without a nitrogen content
 * @param nitrogenKg nitrogen in all, kg; null without a nitrogen content
 * @param deviationPercent product from the planned rate, %, positive: too much; null without a planned rate
 */
public record PassUse(
        double areaHa,
        double productKg,
        double productKgPerHa,
        @Nullable Double nitrogenKgPerHa,
        @Nullable Double nitrogenKg,
        @Nullable Double deviationPercent) {

    private static final double PERCENT = 100;

    /**
     * The figures of one pass.
     *
     * @param areaHa area spread, ha, above 0
     * @param productKg product drawn, kg, at least 0
     * @param nitrogenPercent nitrogen content of the product, %; null when not known
     * @param plannedKgPerHa planned product rate, kg/ha, above 0; null when not known
     * @throws IllegalArgumentException when a value is outside its range
     */
    public static PassUse of(
            double areaHa, double productKg, @Nullable Double nitrogenPercent, @Nullable Double plannedKgPerHa) {
        if (!(areaHa > 0) || !(productKg >= 0)) {
            throw new IllegalArgumentException(
                    "areaHa must be above 0, productKg at least 0: " + areaHa + ", " + productKg);
        }
        double kgPerHa = productKg / areaHa;
        return new PassUse(
                areaHa,
                productKg,
                kgPerHa,
                nitrogenPercent == null ? null : Double.valueOf(kgPerHa * nitrogenPercent / PERCENT),
                nitrogenPercent == null ? null : Double.valueOf(productKg * nitrogenPercent / PERCENT),
                plannedKgPerHa == null
                        ? null
                        : Double.valueOf(HopperCheck.of(productKg, areaHa, plannedKgPerHa)
                                .deviationPercent()));
    }
}
