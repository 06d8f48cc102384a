package org.evenfall.rate;

/**
 * Product used against area done: a cross-check of the rate over a field.
 *
 * @param kgPerHa rate found, kg/ha
 * @param deviationPercent from the wanted rate, %; positive: too much
 */
public record HopperCheck(double kgPerHa, double deviationPercent) {

    /**
     * The check of one field.
     *
     * @param usedKg product used, kg, at least 0
     * @param areaHa area done, ha, above 0
     * @param wantedKgPerHa wanted rate, kg/ha, above 0
     * @throws IllegalArgumentException when a value is outside its range
     */
    public static HopperCheck of(double usedKg, double areaHa, double wantedKgPerHa) {
        if (!(usedKg >= 0) || !(areaHa > 0) || !(wantedKgPerHa > 0)) {
            throw new IllegalArgumentException("usedKg must be at least 0, areaHa and wantedKgPerHa above 0: " + usedKg
                    + ", " + areaHa + ", " + wantedKgPerHa);
        }
        double kgPerHa = usedKg / areaHa;
        return new HopperCheck(kgPerHa, 100 * (kgPerHa / wantedKgPerHa - 1));
    }
}
