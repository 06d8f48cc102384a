package org.evenfall.trays;

import java.util.Optional;

/**
 * The coarse shapes of a test. Whether one side is the matter is another question ({@link MirrorPairs}).
 *
 * @param side left against right
 * @param centre tramline against midway to the next one
 * @param quarter quarter points
 */
record Diagnosis(SpreadShape side, SpreadShape centre, SpreadShape quarter) {

    /** The diagnosis of a test; empty where its shapes cannot be separated. */
    static Optional<Diagnosis> of(Uniformity test) {
        ShapeFit shapes = test.shapes();
        return shapes.shape(ShapeKind.LEFT_RIGHT)
                .flatMap(side -> shapes.shape(ShapeKind.CENTRE_OVERLAP)
                        .flatMap(centre -> shapes.shape(ShapeKind.QUARTER_POINTS)
                                .map(quarter -> new Diagnosis(side, centre, quarter))));
    }

    /** A shape that both sides have in common is significant, so that a lever may help. */
    boolean hasEvenShape() {
        return largestEvenPercent() > 0;
    }

    private double largestEvenPercent() {
        return Math.max(centre.significantSizePercent(), quarter.significantSizePercent());
    }
}
