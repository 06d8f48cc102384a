package org.evenfall.trays;

import java.util.Optional;

/**
 * The coarse shapes of a test, and whether one side is the matter.
 *
 * @param side left against right
 * @param centre tramline against half-way to the next one
 * @param quarter quarter points
 */
record Diagnosis(SpreadShape side, SpreadShape centre, SpreadShape quarter) {

    /** Assumption: one side is the matter when it is more than this share of what both sides have in common. */
    private static final double ONE_SIDED_SHARE = 0.7;

    /** Assumption: above this share it is the only matter, even on a machine in order. */
    private static final double ONLY_ONE_SIDED_SHARE = 2;

    /** The diagnosis of a test; empty where its shapes cannot be separated. */
    static Optional<Diagnosis> of(Uniformity test) {
        ShapeFit shapes = test.shapes();
        return shapes.shape(ShapeKind.LEFT_RIGHT)
                .flatMap(side -> shapes.shape(ShapeKind.CENTRE_OVERLAP)
                        .flatMap(centre -> shapes.shape(ShapeKind.QUARTER_POINTS)
                                .map(quarter -> new Diagnosis(side, centre, quarter))));
    }

    /** One side is the matter. */
    boolean oneSided() {
        return side.significantSizePercent() > ONE_SIDED_SHARE * largestEvenPercent();
    }

    /** One side is the only matter. */
    boolean onlyOneSided() {
        return side.significantSizePercent() > ONLY_ONE_SIDED_SHARE * largestEvenPercent();
    }

    /** A shape that both sides have in common is significant, so that a lever may help. */
    boolean hasEvenShape() {
        return largestEvenPercent() > 0;
    }

    private double largestEvenPercent() {
        return Math.max(centre.significantSizePercent(), quarter.significantSizePercent());
    }
}
