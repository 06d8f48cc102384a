package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.evenfall.flight.DrivingPattern;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The shapes of uneven spreading in the trays, fitted by least squares to catch over mean. Even shapes: 1, cos 2πx/W (the
 * centre against the overlap), cos 4πx/W (the quarter points), cos 6πx/W. Odd shapes: driven back and forth each side
 * meets its own kind and the field repeats every 2 W, so sin πx/W, sin 3πx/W, sin 5πx/W; driven round and round it
 * repeats every W, so sin 2πx/W, sin 4πx/W.
 */
final class Shapes {

    static final String CENTRE_OVERLAP = "centre-overlap";
    static final String QUARTER_POINTS = "quarter-points";
    static final String LEFT_RIGHT = "left-right";

    private record Shape(String name, DoubleUnaryOperator at) {}

    private Shapes() {}

    /** Even shapes come first so that few trays still tell centre, overlap and side. */
    private static List<Shape> shapes(double width, DrivingPattern pattern, int trays) {
        boolean round = pattern == DrivingPattern.ROUND_AND_ROUND;
        double odd = round ? 2 : 1;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape("mean", x -> 1));
        shapes.add(new Shape(CENTRE_OVERLAP, x -> Math.cos(2 * Math.PI * x / width)));
        shapes.add(new Shape(QUARTER_POINTS, x -> Math.cos(4 * Math.PI * x / width)));
        shapes.add(new Shape(LEFT_RIGHT, x -> Math.sin(odd * Math.PI * x / width)));
        if (trays >= 7) {
            shapes.add(new Shape("outer-detail", x -> Math.cos(6 * Math.PI * x / width)));
            shapes.add(new Shape("side-detail", x -> Math.sin((round ? 4 : 3) * Math.PI * x / width)));
            if (!round) {
                shapes.add(new Shape("side-fine-detail", x -> Math.sin(5 * Math.PI * x / width)));
            }
        }
        return shapes;
    }

    /** @param noisePercent noise of one tray, % of the mean */
    static List<SpreadShape> fit(
            List<Double> positionsM,
            List<Double> relativePercent,
            double width,
            DrivingPattern pattern,
            double noisePercent) {
        List<Shape> shapes = shapes(width, pattern, positionsM.size());
        double[][] rows = new double[positionsM.size()][shapes.size()];
        double[] values = new double[positionsM.size()];
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < shapes.size(); j++) {
                rows[i][j] = shapes.get(j).at().applyAsDouble(positionsM.get(i));
            }
            values[i] = relativePercent.get(i);
        }
        RealMatrix design = new Array2DRowRealMatrix(rows, false);
        QRDecomposition normal = new QRDecomposition(design.transposeMultiply(design), 1e-9);
        if (!normal.getSolver().isNonSingular()) {
            return List.of();
        }
        RealMatrix inverse = normal.getSolver().getInverse();
        RealVector amplitudes = inverse.operate(design.transpose().operate(new ArrayRealVector(values, false)));
        List<SpreadShape> modes = new ArrayList<>();
        for (int j = 1; j < shapes.size(); j++) {
            double error = noisePercent * Math.sqrt(Math.max(0, inverse.getEntry(j, j)));
            double amplitude = amplitudes.getEntry(j);
            modes.add(new SpreadShape(shapes.get(j).name(), amplitude, error, Math.abs(amplitude) > 2 * error));
        }
        return modes;
    }

    /** The shapes that stand out of the noise, together, at each tray, % of the mean round 100; empty where none does. */
    static List<Double> told(List<Double> positionsM, List<SpreadShape> modes, double width, DrivingPattern pattern) {
        double[] sum = new double[positionsM.size()];
        boolean any = false;
        for (Shape shape : shapes(width, pattern, positionsM.size())) {
            for (SpreadShape mode : modes) {
                if (mode.significant() && mode.name().equals(shape.name())) {
                    any = true;
                    for (int i = 0; i < sum.length; i++) {
                        sum[i] += mode.amplitudePercent() * shape.at().applyAsDouble(positionsM.get(i));
                    }
                }
            }
        }
        if (!any) {
            return List.of();
        }
        double mean = Arrays.stream(sum).average().orElse(0);
        return Arrays.stream(sum).map(value -> 100 + value - mean).boxed().toList();
    }

    /**
     * Covariance over the trays (n − 1) of two even shapes of amplitude 1, cos 2kπx/W: what they add to CV².
     *
     * @param one k of the one, 1 for centre-overlap, 2 for quarter points
     * @param other k of the other
     */
    static double covariance(List<Double> positionsM, double width, int one, int other) {
        double sumOne = 0;
        double sumOther = 0;
        double products = 0;
        int n = positionsM.size();
        for (double x : positionsM) {
            double a = Math.cos(2 * Math.PI * one * x / width);
            double b = Math.cos(2 * Math.PI * other * x / width);
            sumOne += a;
            sumOther += b;
            products += a * b;
        }
        return (products - sumOne * sumOther / n) / (n - 1);
    }
}
