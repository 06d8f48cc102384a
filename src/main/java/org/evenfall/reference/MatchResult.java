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
 */
public record MatchResult(
        List<RankedReference> ranked,
        @org.jspecify.annotations.Nullable RankedReference chosen,
        Verdict verdict,
        Direction direction,
        @Nullable Double throwAgainstDenseM,
        @Nullable Double widestReachableM,
        boolean outOfReach) {

    public MatchResult {
        ranked = List.copyOf(ranked);
    }
}
