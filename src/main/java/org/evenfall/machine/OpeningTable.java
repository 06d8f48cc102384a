package org.evenfall.machine;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * Opening against flow, linear between the rows. Never extrapolated.
 *
 * @param points rows with strictly rising opening and flow, at least two
 */
public record OpeningTable(List<FlowPoint> points) {

    /**
     * Checks the rows.
     *
     * @throws IllegalArgumentException unless they are {@link #usable}
     */
    public OpeningTable {
        points = List.copyOf(points);
        if (!usable(points)) {
            throw new IllegalArgumentException("at least two rows, opening and flow must both rise: " + points);
        }
    }

    /** Whether rows make a table: at least two, opening and flow strictly rising. */
    public static boolean usable(List<FlowPoint> points) {
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).opening() > points.get(i - 1).opening())
                    || !(points.get(i).kgPerMin() > points.get(i - 1).kgPerMin())) {
                return false;
            }
        }
        return points.size() >= 2;
    }

    /** Flow at an opening, kg/min; empty beyond the table. */
    public OptionalDouble flowKgPerMin(double opening) {
        return interpolated(FlowPoint::opening, FlowPoint::kgPerMin, opening);
    }

    /** Opening that gives a flow; empty beyond the table. */
    public OptionalDouble opening(double kgPerMin) {
        return interpolated(FlowPoint::kgPerMin, FlowPoint::opening, kgPerMin);
    }

    private OptionalDouble interpolated(ToDoubleFunction<FlowPoint> x, ToDoubleFunction<FlowPoint> y, double at) {
        PolynomialSplineFunction lines = new LinearInterpolator()
                .interpolate(
                        points.stream().mapToDouble(x).toArray(),
                        points.stream().mapToDouble(y).toArray());
        return lines.isValidPoint(at) ? OptionalDouble.of(lines.value(at)) : OptionalDouble.empty();
    }

    /**
     * The same table for another product.
     *
     * @param factor factor of every flow, above 0
     */
    public OpeningTable scaled(double factor) {
        return new OpeningTable(points.stream()
                .map(point -> new FlowPoint(point.opening(), factor * point.kgPerMin()))
                .toList());
    }
}
