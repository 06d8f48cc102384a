package org.evenfall.granule;

import java.util.List;

/**
 * Bulk density from several struck-level fillings of one container.
 *
 * @param meanKgPerL mean, kg/L
 * @param sdKgPerL standard deviation of one filling (n − 1), kg/L; 0 with one filling
 * @param standardErrorKgPerL standard error of the mean, scale step included, kg/L
 * @param spreadPercent highest less lowest, % of the mean
 * @param fillings number of fillings
 * @param anotherFillingAdvised fewer than three fillings, or more than 3 % between lowest and highest
 * @param fillingsKgPerL bulk density by each filling, in the order filled, kg/L
 */
public record BulkDensity(
        double meanKgPerL,
        double sdKgPerL,
        double standardErrorKgPerL,
        double spreadPercent,
        int fillings,
        boolean anotherFillingAdvised,
        List<Double> fillingsKgPerL) {

    /** Copies the list. */
    public BulkDensity {
        fillingsKgPerL = List.copyOf(fillingsKgPerL);
    }
}
