package org.evenfall.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/**
 * Where to set one outlet next: between measured points where they enclose the wanted flow, else along the handbook's
 * table scaled by what was caught, else in proportion. Never beyond the table.
 *
 * @param opening number on the scale, or null where the table does not reach
 * @param from where it comes from
 */
record NextOpening(@Nullable Double opening, OpeningSource from) {

    /** An answer for one side from the tests so far; null when that side was never caught. */
    static @Nullable NextOpening of(
            List<BucketAssessment.Catch> soFar, boolean left, double outletKgPerMin, BucketAssessment.Wanted wanted) {
        TreeMap<Double, Double> measured = new TreeMap<>();
        Double lastOpening = null;
        for (BucketAssessment.Catch one : soFar) {
            Double flow = BucketAssessment.meanFlow(left ? one.leftKg() : one.rightKg(), one.timeS());
            if (flow != null) {
                lastOpening = left ? one.openingLeft() : one.openingRight();
                measured.put(lastOpening, flow);
            }
        }
        if (lastOpening == null) {
            return null;
        }
        List<FlowPoint> points = new ArrayList<>();
        measured.forEach((opening, flow) -> points.add(new FlowPoint(opening, flow)));
        if (OpeningTable.usable(points)) {
            OptionalDouble between = new OpeningTable(points).opening(outletKgPerMin);
            if (between.isPresent()) {
                return new NextOpening(between.getAsDouble(), OpeningSource.BETWEEN_MEASURED);
            }
        }
        double lastFlow = measured.getOrDefault(lastOpening, 0.0);
        if (wanted.table() != null) {
            OptionalDouble expected = wanted.table().flowKgPerMin(lastOpening);
            if (expected.isPresent()) {
                double correction = lastFlow * wanted.outlets() / expected.getAsDouble();
                OptionalDouble next = wanted.table().scaled(correction).opening(outletKgPerMin * wanted.outlets());
                return next.isPresent()
                        ? new NextOpening(next.getAsDouble(), OpeningSource.TABLE_SCALED)
                        : new NextOpening(null, OpeningSource.BEYOND_TABLE);
            }
        }
        return lastOpening > 0
                ? new NextOpening(lastOpening * outletKgPerMin / lastFlow, OpeningSource.PROPORTIONAL)
                : null;
    }
}
