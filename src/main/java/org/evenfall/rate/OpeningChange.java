package org.evenfall.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.jspecify.annotations.Nullable;

/** What another opening does to the flow. */
public final class OpeningChange {

    private OpeningChange() {}

    /**
     * Flow at one opening over the flow at another: between measured points where they enclose both, else along the
     * handbook's table, else in proportion to the numbers on the scale.
     *
     * @param from opening whose flow is 1, at least 0
     * @param to the other opening, at least 0
     * @param measured measured flow of one outlet by opening, any unit
     * @param table the handbook's table, or null
     * @return at least 0; infinite from a closed outlet to an open one
     */
    public static double flowRatio(double from, double to, Map<Double, Double> measured, @Nullable OpeningTable table) {
        if (from == to) {
            return 1;
        }
        List<FlowPoint> points = new ArrayList<>();
        new TreeMap<>(measured).forEach((opening, flow) -> points.add(new FlowPoint(opening, flow)));
        OptionalDouble byMeasured =
                OpeningTable.usable(points) ? ratio(new OpeningTable(points), from, to) : OptionalDouble.empty();
        if (byMeasured.isPresent()) {
            return byMeasured.getAsDouble();
        }
        OptionalDouble byTable = table == null ? OptionalDouble.empty() : ratio(table, from, to);
        return byTable.orElse(to / from);
    }

    private static OptionalDouble ratio(OpeningTable table, double from, double to) {
        OptionalDouble one = table.flowKgPerMin(from);
        OptionalDouble other = table.flowKgPerMin(to);
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(other.getAsDouble() / one.getAsDouble())
                : OptionalDouble.empty();
    }
}
