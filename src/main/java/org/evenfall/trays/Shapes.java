package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Fits the shapes of uneven spreading ({@link ShapeKind}) and a constant to catch over mean by least squares. */
final class Shapes {

    /**
     * Below this a diagonal element of R counts as 0 and the shapes as dependent. The columns of the design matrix have
     * lengths of 1 to 6. Assumption: far above rounding (1e-15), so that the amplitudes keep six digits; shapes that are
     * nearly dependent are fitted, with the large standard errors that they deserve.
     */
    private static final double DEPENDENT = 1e-9;

    private Shapes() {}

    /**
     * The shapes in a test. With the design matrix X = QR the amplitudes are a = X⁺r, X⁺ = R⁻¹Qᵀ, and the standard error of
     * an amplitude is the noise of a tray times the length of its row in X⁺. The normal equations would square the condition
     * number of X.
     *
     * @param positionsM places of the trays, m
     * @param relativePercent catches, % of their mean, as many
     * @param noisePercent standard error of one tray, % of the mean, at least 0
     * @return no shapes where the places cannot separate them
     */
    static ShapeFit fit(
            List<Double> positionsM, List<Double> relativePercent, Tramlines tramlines, double noisePercent) {
        List<ShapeKind> kinds = ShapeKind.fitted(tramlines.pattern(), positionsM.size());
        double[][] design = new double[positionsM.size()][kinds.size() + 1];
        for (int i = 0; i < design.length; i++) {
            design[i][0] = 1;
            for (int j = 0; j < kinds.size(); j++) {
                design[i][j + 1] = kinds.get(j).at(positionsM.get(i), tramlines);
            }
        }
        DecompositionSolver solver =
                new QRDecomposition(new Array2DRowRealMatrix(design, false), DEPENDENT).getSolver();
        if (!solver.isNonSingular()) {
            return new ShapeFit(List.of(), List.of());
        }
        RealMatrix pseudoInverse = solver.getInverse();
        double[] relative =
                relativePercent.stream().mapToDouble(Double::doubleValue).toArray();
        double[] amplitudes = pseudoInverse.operate(relative);
        List<SpreadShape> shapes = new ArrayList<>();
        for (int j = 0; j < kinds.size(); j++) {
            double errorOfUnitNoise = new ArrayRealVector(pseudoInverse.getRow(j + 1), false).getNorm();
            shapes.add(SpreadShape.of(kinds.get(j), amplitudes[j + 1], noisePercent * errorOfUnitNoise));
        }
        return new ShapeFit(shapes, significantPercent(positionsM, shapes, tramlines));
    }

    private static List<Double> significantPercent(
            List<Double> positionsM, List<SpreadShape> shapes, Tramlines tramlines) {
        List<SpreadShape> significant =
                shapes.stream().filter(SpreadShape::significant).toList();
        if (significant.isEmpty()) {
            return List.of();
        }
        double[] sum = positionsM.stream()
                .mapToDouble(x -> significant.stream()
                        .mapToDouble(
                                shape -> shape.amplitudePercent() * shape.kind().at(x, tramlines))
                        .sum())
                .toArray();
        double mean = Arrays.stream(sum).average().orElseThrow();
        return Arrays.stream(sum).map(value -> 100 + value - mean).boxed().toList();
    }

    /**
     * Covariance over the trays (n − 1) of two shapes of amplitude 1: what they add to CV².
     *
     * @param positionsM places of the trays, m, at least two
     */
    static double covariance(List<Double> positionsM, Tramlines tramlines, ShapeKind one, ShapeKind other) {
        double sumOne = 0;
        double sumOther = 0;
        double products = 0;
        int n = positionsM.size();
        for (double x : positionsM) {
            double a = one.at(x, tramlines);
            double b = other.at(x, tramlines);
            sumOne += a;
            sumOther += b;
            products += a * b;
        }
        return (products - sumOne * sumOther / n) / (n - 1);
    }
}
