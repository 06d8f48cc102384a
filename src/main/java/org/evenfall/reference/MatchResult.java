package org.evenfall.reference;

import java.util.List;
import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * The closest tested products and what they mean for the settings.
 *
 * @param ranked all that can be compared, closest first
 * @param chosen the one the person chose, else the closest; null without any
 * @param verdict verdict on the chosen one
 * @param direction which way to start
 * @param turnDeg how far the fans of the model are turned towards wider, from today's settings, or without these from those
 *     of a dense 27 % N product, degrees; null where nothing is measured, or a reference was chosen
 * @param directionAgainstDense which way to start from the settings of a dense 27 % N product
 * @param throwAgainstDenseM throw at the edge against a dense 27 % N product, m
 * @param throwAgainstDenseIntervalM its 90 % interval: measurements, packing, range of the model, m
 * @param widestReachableM widest working width that is reachable by the model, m
 * @param reachability whether the tramline width is, by the model
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
        @Nullable Double turnDeg,
        Direction directionAgainstDense,
        @Nullable Double throwAgainstDenseM,
        @Nullable Interval throwAgainstDenseIntervalM,
        @Nullable Double widestReachableM,
        @Nullable Reachability reachability,
        @Nullable PatternChange pattern,
        @Nullable PatternOverlay overlay,
        int redraws) {

    /** The result where nothing is measured of the new product. */
    static final MatchResult NOTHING_MEASURED = new MatchResult(
            List.of(),
            null,
            Verdict.NO_REFERENCE,
            Direction.AS_IT_IS,
            null,
            Direction.AS_IT_IS,
            null,
            null,
            null,
            null,
            null,
            null,
            0);

    /** Copies the list. */
    public MatchResult {
        ranked = List.copyOf(ranked);
    }

    /** Whether the model says that the tramline width is probably beyond reach. */
    public boolean outOfReach() {
        return reachability == Reachability.PROBABLY_NOT;
    }
}
