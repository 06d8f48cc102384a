package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * How much of this product gives the same nitrogen as the product used before: why the opening does not shrink by the ratio
 * of the masses.
 *
 * @param massShare mass of this product over that of the one before, at the same nitrogen: its nitrogen share over this one's
 * @param volumeShare volume over volume, by the bulk densities; null while a bulk density is not known
 * @param otherDensityKgPerL bulk density of the product before, kg/L; null while it is not known
 * @param densityAssumed whether that density was not measured
 */
public record AgainstOther(
        double massShare,
        @Nullable Double volumeShare,
        @Nullable Double otherDensityKgPerL,
        boolean densityAssumed) {

    /** Bulk density of a product with 27 % nitrogen, kg/L. Common practice. */
    public static final double USUAL_DENSITY_KG_PER_L = 1.0;

    /** Nitrogen shares that have this density, %. Assumption: calcium ammonium nitrate is sold with 26 to 28 %. */
    static final double LOWEST_USUAL_PERCENT = 26;

    static final double HIGHEST_USUAL_PERCENT = 28;

    /**
     * Compares two products at the same nitrogen.
     *
     * @param nitrogenPercent nitrogen share of this product, %, above 0
     * @param densityKgPerL its bulk density, kg/L, above 0; null while it is not measured
     * @param otherPercent nitrogen share of the product before, %, above 0
     * @param otherKgPerL its bulk density, kg/L, above 0; null: the usual one of a product with 26 to 28 % nitrogen, else
     *     none
     * @throws IllegalArgumentException unless each number is above 0
     */
    public static AgainstOther of(
            double nitrogenPercent, @Nullable Double densityKgPerL, double otherPercent, @Nullable Double otherKgPerL) {
        requirePositive("nitrogenPercent", nitrogenPercent);
        requirePositive("densityKgPerL", densityKgPerL);
        requirePositive("otherPercent", otherPercent);
        requirePositive("otherKgPerL", otherKgPerL);
        double massShare = otherPercent / nitrogenPercent;
        boolean assumed =
                otherKgPerL == null && otherPercent >= LOWEST_USUAL_PERCENT && otherPercent <= HIGHEST_USUAL_PERCENT;
        Double other = assumed ? Double.valueOf(USUAL_DENSITY_KG_PER_L) : otherKgPerL;
        return new AgainstOther(
                massShare,
                densityKgPerL == null || other == null ? null : Double.valueOf(massShare * other / densityKgPerL),
                other,
                assumed);
    }

    private static void requirePositive(String name, @Nullable Double value) {
        if (value != null && !(value > 0)) {
            throw new IllegalArgumentException(name + " must be above 0: " + value);
        }
    }
}
