package org.evenfall.rate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Forward speed over a measured length, several runs. */
public final class SpeedRuns {

    private SpeedRuns() {}

    /** @param kmPerH speed of each run, above 0, at least one */
    public static SpeedCheck of(List<Double> kmPerH, @Nullable Double plannedKmPerH) {
        double mean = kmPerH.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double lowest = kmPerH.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double highest = kmPerH.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return new SpeedCheck(
                mean,
                100 * (highest - lowest) / mean,
                plannedKmPerH == null ? null : Double.valueOf(100 * (mean / plannedKmPerH - 1)),
                kmPerH.size());
    }

    /** Weight used against area done; a cross-check over a field. */
    public static HopperCheck hopper(double usedKg, double areaHa, double wantedKgPerHa) {
        double found = usedKg / areaHa;
        return new HopperCheck(found, 100 * (found / wantedKgPerHa - 1));
    }
}
