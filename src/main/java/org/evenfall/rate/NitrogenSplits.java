package org.evenfall.rate;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The nitrogen of a season, pass by pass.
 *
 * @param passesKgPerHa nitrogen of each pass in order, kg/ha, at least one, each above 0
 * @param totalKgPerHa nitrogen of all passes, kg/ha
 * @param thisPassNumbers numbers, from 1, of the passes that give what is planned now; empty where none does
 */
public record NitrogenSplits(List<Double> passesKgPerHa, double totalKgPerHa, List<Integer> thisPassNumbers) {

    /** Assumption: rates that differ by no more are one rate, kg/ha; both are typed as whole numbers. */
    public static final double SAME_KG_PER_HA = 1;

    /** Rounding room, kg/ha. */
    private static final double ROUNDING = 1e-9;

    /** Copies the lists. */
    public NitrogenSplits {
        passesKgPerHa = List.copyOf(passesKgPerHa);
        thisPassNumbers = List.copyOf(thisPassNumbers);
    }

    /**
     * Adds the passes up and finds the one planned now.
     *
     * @param passesKgPerHa nitrogen of each pass in order, kg/ha
     * @param plannedKgPerHa nitrogen planned now, kg/ha; null while it is not known
     * @throws IllegalArgumentException without a pass, or unless each is above 0
     */
    public static NitrogenSplits of(List<Double> passesKgPerHa, @Nullable Double plannedKgPerHa) {
        if (passesKgPerHa.isEmpty()) {
            throw new IllegalArgumentException("passesKgPerHa must not be empty");
        }
        for (double pass : passesKgPerHa) {
            if (!(pass > 0)) {
                throw new IllegalArgumentException("passesKgPerHa must be above 0: " + pass);
            }
        }
        List<Integer> planned = plannedKgPerHa == null
                ? List.of()
                : IntStream.range(0, passesKgPerHa.size())
                        .filter(i -> Math.abs(passesKgPerHa.get(i) - plannedKgPerHa) <= SAME_KG_PER_HA + ROUNDING)
                        .mapToObj(i -> i + 1)
                        .toList();
        return new NitrogenSplits(
                passesKgPerHa,
                passesKgPerHa.stream().mapToDouble(Double::doubleValue).sum(),
                planned);
    }
}
