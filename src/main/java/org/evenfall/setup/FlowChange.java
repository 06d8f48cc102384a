package org.evenfall.setup;

import java.util.HashMap;
import java.util.Map;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.OpeningTable;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.OpeningChange;
import org.jspecify.annotations.Nullable;

/** By how much two openings of this machine differ in flow; a factor changes the flow in proportion. */
final class FlowChange {

    private final Map<Double, Double> left = new HashMap<>();
    private final Map<Double, Double> right = new HashMap<>();
    private final @Nullable OpeningTable table;

    /** @param rate gives the measured points */
    FlowChange(MachineProfile machine, RateResult rate) {
        boolean byFactor = machine.rateSetting().byFactor();
        this.table = !byFactor && OpeningTable.usable(machine.openings()) ? new OpeningTable(machine.openings()) : null;
        if (byFactor) {
            return;
        }
        for (BucketResult test : rate.bucketTests()) {
            put(left, test.openingLeft(), test.flow().leftKgPerMin());
            put(right, test.openingRight(), test.flow().rightKgPerMin());
        }
    }

    private static void put(Map<Double, Double> points, double opening, @Nullable Double flow) {
        if (flow != null) {
            points.put(opening, flow);
        }
    }

    /** The larger change of both sides, % of the flow at the openings now; 0 while either is not known. */
    double percent(Openings then, Openings now) {
        return Math.max(percent(then.left(), now.left(), left), percent(then.right(), now.right(), right));
    }

    private double percent(@Nullable Double then, @Nullable Double now, Map<Double, Double> measured) {
        return then == null || now == null
                ? 0
                : 100 * Math.abs(OpeningChange.flowRatio(now, then, measured, table) - 1);
    }
}
