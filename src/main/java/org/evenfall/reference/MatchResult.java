package org.evenfall.reference;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The closest tested products and what they mean for the settings.
 *
 * @param ranked all that can be compared, nearest first
 * @param chosen the one the person chose, else the nearest; null without any
 * @param verdict verdict on the chosen one
 * @param direction which way to start
 * @param throwAgainstDenseM throw against a dense 27 % N product, m
 * @param widestReachableM widest working width that is reachable by the model, m
 * @param outOfReach the model says this width is out of reach
 * @param pattern what becomes of the pattern if the settings of the chosen one are kept, or without one those of a dense
 *     27 % N product; null where nothing is measured
 * @param overlay their landing patterns on one grid; null where nothing is measured
 * @param redraws how often the measurements were repeated in simulation
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
        @Nullable PatternOverlay overlay,
        int redraws) {

    /** The result where nothing is measured of the new product. */
    static final MatchResult NOTHING_MEASURED = new MatchResult(
            List.of(), null, Verdict.NO_REFERENCE, Direction.AS_IT_IS, null, null, false, null, null, 0);

    /** Copies the list. */
    public MatchResult {
        ranked = List.copyOf(ranked);
    }
}
