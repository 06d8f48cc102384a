package org.evenfall.rate;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.statistics.descriptive.Mean;

/**
 * A known weight that ran through one outlet and was timed, as the equivalent catch: over the mean time T of all repeats, each
 * repeat of time t gives W × T / t, so that its flow is W / t and the timing error is that of T.
 *
 * @param timeS mean time, s
 * @param leftKg equivalent weight of each repeat left, kg
 * @param rightKg the same right
 */
public record TimedWeight(double timeS, List<Double> leftKg, List<Double> rightKg) {

    /** Copies the lists. */
    public TimedWeight {
        leftKg = List.copyOf(leftKg);
        rightKg = List.copyOf(rightKg);
    }

    /**
     * From the times of the repeats.
     *
     * @param weightKg the known weight, kg
     * @param leftS times left, s
     * @param rightS times right, s; one of the two lists may be empty
     * @throws IllegalArgumentException unless the weight and every time are above 0 and there is at least one time
     */
    public static TimedWeight of(double weightKg, List<Double> leftS, List<Double> rightS) {
        double[] all = Stream.concat(leftS.stream(), rightS.stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (!(weightKg > 0)
                || all.length == 0
                || Stream.of(leftS, rightS).flatMap(List::stream).anyMatch(s -> !(s > 0))) {
            throw new IllegalArgumentException("weightKg and each time must be above 0, at least one time: " + weightKg
                    + ", " + leftS + ", " + rightS);
        }
        double meanS = Mean.of(all).getAsDouble();
        return new TimedWeight(meanS, equivalent(weightKg, meanS, leftS), equivalent(weightKg, meanS, rightS));
    }

    private static List<Double> equivalent(double weightKg, double meanS, List<Double> timesS) {
        return timesS.stream().map(timeS -> weightKg * meanS / timeS).toList();
    }
}
