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

    /** Assumption: what the two shapes do not explain changes by this share, in squares, from one setting to another. */
    private static final double RESIDUAL_ERROR_SHARE = 1;

    /** Those of the last test; the residual variance is 0 where the machine's own CV or its shapes cannot be determined. */
    static EvenShapeVariance of(Uniformity last, Tramlines tramlines) {
        List<Double> positionsM = last.positionsM();
        EvenShapeVariance shapesOnly = new EvenShapeVariance(
                Shapes.covariance(positionsM, tramlines, ShapeKind.CENTRE_OVERLAP, ShapeKind.CENTRE_OVERLAP),
                Shapes.covariance(positionsM, tramlines, ShapeKind.QUARTER_POINTS, ShapeKind.QUARTER_POINTS),
                Shapes.covariance(positionsM, tramlines, ShapeKind.CENTRE_OVERLAP, ShapeKind.QUARTER_POINTS),
                0);
        Double machine = last.cv().machinePercent();
        double residual = machine == null
                ? 0
                : Diagnosis.of(last)
                        .map(shape -> machine * machine
                                - shapesOnly.explained(
                                        shape.centre().amplitudePercent(),
                                        shape.quarter().amplitudePercent()))
                        .orElse(0.0);
        return new EvenShapeVariance(
                shapesOnly.centreShare, shapesOnly.quarterShare, shapesOnly.crossShare, Math.max(0, residual));
    }

    /** CV² with these amplitudes, %², at least 0; amplitudes in % of the mean. */
    double cvSquare(double centrePercent, double quarterPercent) {
        return Math.max(0, residualVariance + explained(centrePercent, quarterPercent));
    }

    /**
     * Variance that an error of the amplitudes adds to CV², %⁴.
     *
     * @param centrePercent amplitude, and its error
     * @param quarterPercent amplitude, and its error
     */
    double squareVariance(double centrePercent, double centreError, double quarterPercent, double quarterError) {
        double centre = centreShare * centreShare * ofSquare(centrePercent, centreError);
        double quarter = quarterShare * quarterShare * ofSquare(quarterPercent, quarterError);
        double residual = RESIDUAL_ERROR_SHARE * residualVariance;
        return centre + quarter + residual * residual;
    }

    /** Variance of the square of a normal number: 2 s⁴ + 4 m² s². */
    private static double ofSquare(double mean, double error) {
        double square = error * error;
        return 2 * square * square + 4 * mean * mean * square;
    }

    private double explained(double centre, double quarter) {
        return centreShare * centre * centre + quarterShare * quarter * quarter + 2 * crossShare * centre * quarter;
    }
}
