package org.evenfall.trays;

import org.jspecify.annotations.Nullable;

/**
 * What a tray test adds to its strip. Every run of the three passes puts the full rate on the middle strip once more.
 *
 * @param runs runs of the three passes
 * @param productPerRunKgPerHa product of one run on the middle strip, kg/ha
 * @param nitrogenPerRunKgPerHa nitrogen of one run, kg/ha; null where the product's share is not known
 * @param nitrogenKgPerHa nitrogen of all runs, kg/ha; null where the product's share is not known
 * @param lengthM length of the passes that the amount used is for, m
 * @param productUsedKg product that all runs of the three passes use over that length, kg
 */
public record StripLoad(
        int runs,
        double productPerRunKgPerHa,
        @Nullable Double nitrogenPerRunKgPerHa,
        @Nullable Double nitrogenKgPerHa,
        double lengthM,
        double productUsedKg) {

    /** Assumption: length of a pass with the outlets open, m; the machine has its full width well before the trays. */
    public static final double PASS_LENGTH_M = 100;

    private static final int PASSES = 3;
    private static final double M2_PER_HA = 10_000;

    /**
     * What so many runs add.
     *
     * @param productKgPerHa product rate, kg/ha, above 0
     * @param nitrogenKgPerHa nitrogen rate, kg/ha, above 0; null where it is not known
     * @param runs runs of the three passes, at least 1
     * @param tramlineWidthM distance between tramlines, m, above 0
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static StripLoad of(
            double productKgPerHa, @Nullable Double nitrogenKgPerHa, int runs, double tramlineWidthM) {
        if (!(productKgPerHa > 0)
                || !(tramlineWidthM > 0)
                || runs < 1
                || (nitrogenKgPerHa != null && !(nitrogenKgPerHa > 0))) {
            throw new IllegalArgumentException("rates and width above 0, runs at least 1: " + productKgPerHa + ", "
                    + nitrogenKgPerHa + ", " + tramlineWidthM + ", " + runs);
        }
        return new StripLoad(
                runs,
                productKgPerHa,
                nitrogenKgPerHa,
                nitrogenKgPerHa == null ? null : Double.valueOf(runs * nitrogenKgPerHa),
                PASS_LENGTH_M,
                PASSES * tramlineWidthM * PASS_LENGTH_M / M2_PER_HA * productKgPerHa * runs);
    }
}
