package org.evenfall.setup;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.SinglePassTrayEntry;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.OverlapResult;
import org.jspecify.annotations.Nullable;

/** Step 6, the other way: one pass over a long line of trays. */
final class SinglePassAssessor {

    private static final String AT = "/trays/line";

    private SinglePassAssessor() {}

    static @Nullable SinglePassTest assess(
            TrayEntries entries,
            double widthM,
            DrivingPattern driving,
            @Nullable Double boreMm,
            @Nullable Double densityKgPerL,
            EntryReader reader) {
        SortedMap<Double, Double> line = new TreeMap<>();
        for (int i = 0; i < entries.line().size(); i++) {
            SinglePassTrayEntry tray = entries.line().get(i);
            Double position = reader.read(tray.position(), Fields.TRAY_POSITION, AT + "/" + i + "/position");
            Double grams = nothing(tray.amount())
                    ? Double.valueOf(0)
                    : CatchReader.grams(
                            tray.amount(),
                            entries.catchKind(),
                            boreMm,
                            densityKgPerL,
                            AT + "/" + i + "/amount",
                            reader);
            if (position != null && grams != null && line.put(position, grams) != null) {
                reader.add(Finding.warn(Step.TRAYS, "trays.line.twice", Arg.number(position, 1, Unit.M))
                        .at(AT));
            }
        }
        if (line.isEmpty()) {
            return null;
        }
        if (line.size() < OverlapResult.USUAL_FEWEST || line.size() > OverlapResult.MOST) {
            reader.add(Finding.note(
                            Step.TRAYS,
                            "trays.line.count",
                            Arg.count(line.size()),
                            Arg.count(OverlapResult.USUAL_FEWEST),
                            Arg.count(OverlapResult.MOST))
                    .at(AT));
        }
        boolean caught = line.values().stream().anyMatch(grams -> grams > 0);
        if (line.size() < OverlapResult.FEWEST || !caught) {
            return null;
        }
        SpreadPattern pattern = new SpreadPattern(
                line.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                line.values().stream().mapToDouble(Double::doubleValue).toArray());
        OverlapResult laid = OverlapResult.of(pattern, driving, widthM);
        WidthScan scan = OverlapResult.scan(pattern, driving);
        tell(laid, scan, widthM, reader);
        return new SinglePassTest(laid, good(scan), acceptable(scan), pattern.positionsM(), pattern.amounts());
    }

    /** At the ends of the line an empty tray is what one wants, not something to look at again. */
    private static boolean nothing(EnteredQuantity amount) {
        return NumberText.read(amount.text()) instanceof NumberReading.Value value && value.value() == 0;
    }

    private static void tell(OverlapResult laid, WidthScan scan, double widthM, EntryReader reader) {
        if (laid.cvPercent() != null) {
            reader.add(Finding.note(
                            Step.TRAYS,
                            "trays.line.cv",
                            Arg.number(widthM, 0, Unit.M),
                            Arg.number(laid.cvPercent(), 0, Unit.PERCENT))
                    .at(AT));
        }
        List<WidthScan.Interval> even = acceptable(scan);
        reader.add((even.isEmpty()
                        ? Finding.note(Step.TRAYS, "trays.line.noWidth")
                        : Finding.note(Step.TRAYS, "trays.line.widths", Arg.text(told(even))))
                .at(AT));
        if (laid.edgePercent() > OverlapResult.EDGE_PERCENT) {
            reader.add(Finding.warn(Step.TRAYS, "trays.line.edge", Arg.number(laid.edgePercent(), 0, Unit.PERCENT))
                    .at(AT));
        }
    }

    private static List<WidthScan.Interval> good(WidthScan scan) {
        return scan.atMost(EvennessVerdict.GOOD.limitPercent());
    }

    private static List<WidthScan.Interval> acceptable(WidthScan scan) {
        return scan.atMost(EvennessVerdict.ACCEPTABLE.limitPercent());
    }

    private static String told(List<WidthScan.Interval> widths) {
        return widths.stream()
                .map(one -> Math.round(one.from()) + "–" + Math.round(one.to()))
                .collect(Collectors.joining(", "));
    }
}
