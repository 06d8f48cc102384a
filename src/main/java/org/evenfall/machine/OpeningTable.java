package org.evenfall.machine;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Opening against flow, straight lines between the rows. Never read beyond its ends.
 *
 * @param points rows with strictly rising opening and flow, at least two
 */
public record OpeningTable(List<FlowPoint> points) {

    public OpeningTable {
        points = List.copyOf(points);
        if (!usable(points)) {
            throw new IllegalArgumentException("opening and flow must both rise: " + points);
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
        for (int i = 1; i < points.size(); i++) {
            FlowPoint low = points.get(i - 1);
            FlowPoint high = points.get(i);
            if (low.opening() <= opening && opening <= high.opening()) {
                double part = (opening - low.opening()) / (high.opening() - low.opening());
                return OptionalDouble.of(low.kgPerMin() + part * (high.kgPerMin() - low.kgPerMin()));
            }
        }
        return OptionalDouble.empty();
    }

    /** Opening that gives a flow; empty beyond the table. */
    public OptionalDouble opening(double kgPerMin) {
        for (int i = 1; i < points.size(); i++) {
            FlowPoint low = points.get(i - 1);
            FlowPoint high = points.get(i);
            if (low.kgPerMin() <= kgPerMin && kgPerMin <= high.kgPerMin()) {
                double part = (kgPerMin - low.kgPerMin()) / (high.kgPerMin() - low.kgPerMin());
                return OptionalDouble.of(low.opening() + part * (high.opening() - low.opening()));
            }
        }
        return OptionalDouble.empty();
    }

    /** The same table for another product: every flow times a factor above 0. */
    public OpeningTable scaled(double factor) {
        return new OpeningTable(points.stream()
                .map(point -> new FlowPoint(point.opening(), factor * point.kgPerMin()))
                .toList());
    }
}
