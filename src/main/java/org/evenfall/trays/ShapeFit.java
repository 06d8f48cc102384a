package org.evenfall.trays;

import java.util.List;
import java.util.Optional;

/**
 * The shapes found in one test.
 *
 * @param shapes each shape with its standard error; empty where the places of the trays cannot separate the shapes
 * @param significantPercent the significant shapes together at each tray, % of the mean; empty where none is significant
 */
public record ShapeFit(List<SpreadShape> shapes, List<Double> significantPercent) {

    /** Copies both lists. */
    public ShapeFit {
        shapes = List.copyOf(shapes);
        significantPercent = List.copyOf(significantPercent);
    }

    /** The shape of one kind; empty where it was not fitted. */
    public Optional<SpreadShape> shape(ShapeKind kind) {
        return shapes.stream().filter(shape -> shape.kind() == kind).findFirst();
    }
}
