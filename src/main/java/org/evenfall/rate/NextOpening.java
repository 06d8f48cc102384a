package org.evenfall.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/**
 * Next opening of one outlet: between measured points where they enclose the wanted flow, else along the handbook's table
 * scaled to the flow caught, else in proportion. Never beyond the table.
 *
 * @param opening number on the scale, or null where the table does not reach
 * @param source how it was found
 */
record NextOpening(@Nullable Double opening, OpeningSource source) {

    /**
     * The next opening of one side from the tests so far. Of two tests at one opening the later counts.
     *
     * @param soFar the tests, the last one last
     * @param left the left side, else the right
     * @param outletKgPerMin wanted flow of one outlet, kg/min
     * @param wanted gives the table and the number of outlets
     * @return null when that side was never caught, or was closed and no table helps
     */
    static @Nullable NextOpening of(
            List<BucketAssessment.Catch> soFar, boolean left, double outletKgPerMin, BucketAssessment.Wanted wanted) {
        TreeMap<Double, Double> measured = new TreeMap<>();
        Double lastOpening = null;
        for (BucketAssessment.Catch one : soFar) {
            List<Double> kg = left ? one.leftKg() : one.rightKg();
            if (!kg.isEmpty()) {
                lastOpening = left ? one.openingLeft() : one.openingRight();
                measured.put(lastOpening, CaughtSides.flow(kg, one.timeS()));
            }
        }
        if (lastOpening == null) {
            return null;
        }
        OptionalDouble between = betweenMeasured(measured, outletKgPerMin);
        if (between.isPresent()) {
            return new NextOpening(between.getAsDouble(), OpeningSource.BETWEEN_MEASURED);
        }
        double lastFlow = measured.getOrDefault(lastOpening, 0.0);
        NextOpening byTable = alongTable(lastOpening, lastFlow, outletKgPerMin, wanted);
        if (byTable != null) {
            return byTable;
        }
        return lastOpening > 0
                ? new NextOpening(lastOpening * outletKgPerMin / lastFlow, OpeningSource.PROPORTIONAL)
                : null;
    }

    private static OptionalDouble betweenMeasured(TreeMap<Double, Double> measured, double outletKgPerMin) {
        List<FlowPoint> points = new ArrayList<>();
        measured.forEach((opening, flow) -> points.add(new FlowPoint(opening, flow)));
        return OpeningTable.usable(points) ? new OpeningTable(points).opening(outletKgPerMin) : OptionalDouble.empty();
    }

    /** Null without a table, or where the last opening lies beyond it. */
    private static @Nullable NextOpening alongTable(
            double lastOpening, double lastFlow, double outletKgPerMin, BucketAssessment.Wanted wanted) {
        OpeningTable table = wanted.table();
        OptionalDouble expected = table == null ? OptionalDouble.empty() : table.flowKgPerMin(lastOpening);
        if (table == null || expected.isEmpty()) {
            return null;
        }
        double correction = lastFlow * wanted.outlets() / expected.getAsDouble();
        OptionalDouble next = table.scaled(correction).opening(outletKgPerMin * wanted.outlets());
        return next.isPresent()
                ? new NextOpening(next.getAsDouble(), OpeningSource.TABLE_SCALED)
                : new NextOpening(null, OpeningSource.BEYOND_TABLE);
    }
}
