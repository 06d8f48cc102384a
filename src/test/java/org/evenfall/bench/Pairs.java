package org.evenfall.bench;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Times measured in turns: each of the work directly after one of its baseline, so that the load of the computer is in both.
 *
 * @param all at least one, in the order they were measured
 */
public record Pairs(List<Pair> all) {

    /**
     * One turn.
     *
     * @param workMs time of the work, ms
     * @param bareMs time of its baseline, ms
     */
    public record Pair(double workMs, double bareMs) {

        double ratio() {
            return workMs / bareMs;
        }
    }

    /** Copies the list. */
    public Pairs {
        all = List.copyOf(all);
        if (all.isEmpty()) {
            throw new IllegalArgumentException("nothing was measured");
        }
    }

    /** The same for a part of the work, where one piece of work is several alike. */
    Pairs each(int parts) {
        return new Pairs(all.stream()
                .map(pair -> new Pair(pair.workMs() / parts, pair.bareMs() / parts))
                .toList());
    }

    double workMs() {
        return at(0.5, Pair::workMs);
    }

    double bareMs() {
        return at(0.5, Pair::bareMs);
    }

    /** Median of the ratios of the turns. */
    double ratio() {
        return at(0.5, Pair::ratio);
    }

    double lowestRatio() {
        return at(0, Pair::ratio);
    }

    double highestRatio() {
        return at(1, Pair::ratio);
    }

    private double at(double share, ToDoubleFunction<Pair> value) {
        double[] sorted = all.stream().mapToDouble(value).sorted().toArray();
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
