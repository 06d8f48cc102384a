package org.evenfall.granule;

import java.util.List;

/** Bulk density by weighing struck-level, untapped fillings of one container. */
public final class BulkDensities {

    /** Fillings below which another is asked for. */
    public static final int FEWEST_FILLINGS = 3;

    /** Spread between lowest and highest, % of the mean, above which another filling is asked for. Ours. */
    public static final double WIDEST_SPREAD_PERCENT = 3;

    private BulkDensities() {}

    /**
     * @param netKg net weight of each filling, kg, above 0, at least one
     * @param volumeL volume of the container, L, above 0
     * @param scaleStepKg smallest step of the scale, kg, 0 when not known; adds step/√12 to the error of one weighing
     */
    public static BulkDensity of(List<Double> netKg, double volumeL, double scaleStepKg) {
        if (netKg.isEmpty() || !(volumeL > 0) || netKg.stream().anyMatch(kg -> !(kg > 0)) || !(scaleStepKg >= 0)) {
            throw new IllegalArgumentException("netKg and volumeL must be above 0, scaleStepKg at least 0: " + netKg
                    + ", " + volumeL + ", " + scaleStepKg);
        }
        int n = netKg.size();
        double mean = netKg.stream().mapToDouble(kg -> kg / volumeL).average().orElseThrow();
        double squares = netKg.stream()
                .mapToDouble(kg -> Math.pow(kg / volumeL - mean, 2))
                .sum();
        double sd = n > 1 ? Math.sqrt(squares / (n - 1)) : 0;
        double lowest = netKg.stream().mapToDouble(kg -> kg / volumeL).min().orElseThrow();
        double highest = netKg.stream().mapToDouble(kg -> kg / volumeL).max().orElseThrow();
        double spreadPercent = 100 * (highest - lowest) / mean;
        double reading = scaleStepKg / Math.sqrt(12) / volumeL;
        // one filling alone says nothing of its scatter: 1 % is taken, what careful fillings show (ours)
        double scatter = n > 1 ? sd : 0.01 * mean;
        // the empty weight is read once and does not average out
        double standardError = Math.sqrt((scatter * scatter + reading * reading) / n + reading * reading);
        return new BulkDensity(
                mean,
                sd,
                standardError,
                spreadPercent,
                n,
                n < FEWEST_FILLINGS || spreadPercent > WIDEST_SPREAD_PERCENT,
                netKg.stream().map(kg -> kg / volumeL).toList());
    }
}
