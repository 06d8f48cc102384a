package org.evenfall.trays;

import java.util.List;

/**
 * What the two even shapes add to CV²: cvSquare = residual + c·centre² + q·quarter² + 2x·centre·quarter.
 *
 * @param centreShare c, variance of the centre-overlap shape over the trays
 * @param quarterShare q, variance of the quarter-point shape
 * @param crossShare x, covariance of the two
 * @param residualVariance CV² of the machine that the two do not explain, %², at least 0
 */
record EvenShapeVariance(double centreShare, double quarterShare, double crossShare, double residualVariance) {

    /** Mean square over the field of a cosine of amplitude 1. Exact. */
    private static final double SQUARE_OF_COSINE = 0.5;

    /** Over the whole field, where the two shapes are independent. */
    static EvenShapeVariance ofField(double residualVariance) {
        return new EvenShapeVariance(SQUARE_OF_COSINE, SQUARE_OF_COSINE, 0, residualVariance);
    }

    /** Over the trays of a test; the residual variance is 0 where the machine's own CV cannot be determined. */
    static EvenShapeVariance of(Uniformity test, Diagnosis shape, Tramlines tramlines) {
        List<Double> positionsM = test.positionsM();
        EvenShapeVariance shapesOnly = new EvenShapeVariance(
                Shapes.covariance(positionsM, tramlines, ShapeKind.CENTRE_OVERLAP, ShapeKind.CENTRE_OVERLAP),
                Shapes.covariance(positionsM, tramlines, ShapeKind.QUARTER_POINTS, ShapeKind.QUARTER_POINTS),
                Shapes.covariance(positionsM, tramlines, ShapeKind.CENTRE_OVERLAP, ShapeKind.QUARTER_POINTS),
                0);
        Double machine = test.cv().machinePercent();
        double residual = machine == null ? 0 : machine * machine - shapesOnly.evenSquare(shape);
        return new EvenShapeVariance(
                shapesOnly.centreShare, shapesOnly.quarterShare, shapesOnly.crossShare, Math.max(0, residual));
    }

    /** CV² with these amplitudes, %², at least 0; amplitudes in % of the mean. */
    double cvSquare(double centrePercent, double quarterPercent) {
        return residualVariance + evenSquare(centrePercent, quarterPercent);
    }

    /** What the two shapes add to that, %², at least 0. */
    double evenSquare(double centre, double quarter) {
        return Math.max(
                0,
                centreShare * centre * centre + quarterShare * quarter * quarter + 2 * crossShare * centre * quarter);
    }

    /** What the two shapes of a test add. */
    double evenSquare(Diagnosis shape) {
        return evenSquare(shape.centre().amplitudePercent(), shape.quarter().amplitudePercent());
    }
}
