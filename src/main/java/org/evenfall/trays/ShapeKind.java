package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.DrivingPattern;

/**
 * A shape of uneven spreading across the tramline width W, with x = 0 on the tramline. Even shapes are cosines of 2, 4 and 6
 * half-turns, cos kπx/W. Odd shapes are sines, sin kπx/W: driven back and forth each side meets its own kind and the field
 * repeats every 2 W, so k is 1, 3, 5; driven round and round it repeats every W, so k is 2, 4.
 */
public enum ShapeKind {
    /** Positive: more at the tramline than midway to the next one. */
    CENTRE_OVERLAP("centre-overlap", true, 2, 2),
    /** Positive: more at the tramline and midway, less at a quarter of the width. */
    QUARTER_POINTS("quarter-points", true, 4, 4),
    /** Positive: more on the right. */
    LEFT_RIGHT("left-right", false, 1, 2),
    /** Finer even detail. */
    OUTER_DETAIL("outer-detail", true, 6, 6),
    /** Finer odd detail. */
    SIDE_DETAIL("side-detail", false, 3, 4),
    /** The finest odd detail that seven trays can show; only back and forth. */
    SIDE_FINE_DETAIL("side-fine-detail", false, 5, 0);

    /** From so many trays on there are enough to fit the details too. */
    private static final int TRAYS_FOR_DETAILS = 7;

    private static final List<ShapeKind> COARSE = List.of(CENTRE_OVERLAP, QUARTER_POINTS, LEFT_RIGHT);

    private final String publishedName;
    private final boolean even;
    private final int halfTurnsBackAndForth;
    private final int halfTurnsRoundAndRound;

    ShapeKind(String publishedName, boolean even, int halfTurnsBackAndForth, int halfTurnsRoundAndRound) {
        this.publishedName = publishedName;
        this.even = even;
        this.halfTurnsBackAndForth = halfTurnsBackAndForth;
        this.halfTurnsRoundAndRound = halfTurnsRoundAndRound;
    }

    /** Its name in the published JSON and in the keys of sentences, for example {@code centre-overlap}. */
    public String publishedName() {
        return publishedName;
    }

    /** The shapes that so many trays can separate, the coarse ones first. */
    static List<ShapeKind> fitted(DrivingPattern pattern, int trays) {
        List<ShapeKind> kinds = new ArrayList<>(COARSE);
        if (trays >= TRAYS_FOR_DETAILS) {
            kinds.add(OUTER_DETAIL);
            kinds.add(SIDE_DETAIL);
            if (pattern != DrivingPattern.ROUND_AND_ROUND) {
                kinds.add(SIDE_FINE_DETAIL);
            }
        }
        return kinds;
    }

    /** The shape with amplitude 1 at a place, −1 to 1. */
    double at(double xM, Tramlines tramlines) {
        boolean round = tramlines.pattern() == DrivingPattern.ROUND_AND_ROUND;
        double angle = (round ? halfTurnsRoundAndRound : halfTurnsBackAndForth) * Math.PI * xM / tramlines.widthM();
        return even ? Math.cos(angle) : Math.sin(angle);
    }
}
