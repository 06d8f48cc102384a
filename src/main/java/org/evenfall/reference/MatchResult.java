package org.evenfall.reference;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The closest tested products, best first.
 *
 * @param ranked all that can be compared, best first
 * @param chosen the one the person chose, or the best
 * @param verdict verdict on the chosen one
 * @param direction which way to start
 * @param throwAgainstDenseM throw against a dense 27 % N product, m
 * @param widestReachableM widest working width that looks reachable, by the model, m
 * @param outOfReach the model says this width is out of reach
 * @param pattern what becomes of the pattern if the settings of the chosen one are kept, or without one those of a dense
 *     27 % N product; null where nothing is measured
 * @param laidOver their landing patterns over each other
 * @param redraws how often the measurements were redone in simulation
 */
public record MatchResult(
        List<RankedProduct> ranked,
        @Nullable RankedProduct chosen,
        Verdict verdict,
        Direction direction,
        @Nullable Double throwAgainstDenseM,
        @Nullable Double widestReachableM,
        boolean outOfReach,
        @Nullable PatternChange pattern,
        @Nullable PatternOverlay laidOver,
        int redraws) {

    public MatchResult {
        ranked = List.copyOf(ranked);
    }
}
