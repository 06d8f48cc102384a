package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.SinglePassTrayEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.OverlapResult;
import org.jspecify.annotations.Nullable;

/** Step 6, the other way: one pass over a long line of trays, overlapped by arithmetic. */
final class SinglePassAssessor {

    private static final String AT = TrayPaths.LINE.pointer();

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private SinglePassAssessor(ReadSetup read) {
        this.read = read;
    }

    static Assessed<SinglePassTest> assess(ReadSetup read, ProductResult product, double widthM, TestGround ground) {
        SinglePassAssessor assessor = new SinglePassAssessor(read);
        return new Assessed<>(assessor.test(product, widthM, ground), assessor.findings);
    }

    private @Nullable SinglePassTest test(ProductResult product, double widthM, TestGround ground) {
        SortedMap<Double, Double> line = line(new CatchReader(read, product, findings));
        if (line.isEmpty()) {
            return null;
        }
        if (line.size() < OverlapResult.USUAL_FEWEST || line.size() > OverlapResult.MOST) {
            findings.add(Finding.note(
                            Step.TRAYS,
                            "trays.line.count",
                            Arg.count(line.size()),
                            Arg.count(OverlapResult.USUAL_FEWEST),
                            Arg.count(OverlapResult.MOST))
                    .from("source.lineTrays")
                    .at(AT));
        }
        boolean anyCaught = line.values().stream().anyMatch(grams -> grams > 0);
        if (line.size() < OverlapResult.FEWEST || !anyCaught) {
            return null;
        }
        SpreadPattern pattern = new SpreadPattern(
                line.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                line.values().stream().mapToDouble(Double::doubleValue).toArray());
        OverlapResult overlap = OverlapResult.of(pattern, ground.driving(), widthM);
        WidthScan scan = OverlapResult.scan(pattern, ground.driving());
        addFindings(overlap, scan, widthM);
        return new SinglePassTest(
                overlap,
                scan.atMost(CvLimits.GOOD_PERCENT),
                scan.atMost(CvLimits.FIELD_PERCENT),
                pattern.positionsM(),
                pattern.amounts());
    }

    /** What each tray caught, g, by its position, m, from left to right. */
    private SortedMap<Double, Double> line(CatchReader catches) {
        SortedMap<Double, Double> line = new TreeMap<>();
        for (int i = 0; i < read.get(TrayPaths.LINE).size(); i++) {
            EntryPath<SinglePassTrayEntry> at = TrayPaths.LINE.item(i);
            Double position = read.number(TrayPaths.LINE_POSITION, at);
            Double grams = catches.grams(TrayPaths.LINE_AMOUNT.at(at));
            if (position != null && grams != null && line.put(position, grams) != null) {
                findings.add(Finding.warn(
                                Step.TRAYS,
                                "trays.line.twice",
                                read.typed(TrayPaths.LINE_POSITION, TrayPaths.LINE_POSITION.at(at)))
                        .at(TrayPaths.LINE_POSITION.at(at).pointer()));
            }
        }
        return line;
    }

    private void addFindings(OverlapResult overlap, WidthScan scan, double widthM) {
        if (overlap.cvPercent() != null) {
            findings.add(Finding.note(
                            Step.TRAYS,
                            "trays.line.cv",
                            Arg.number(widthM, 0, Unit.M),
                            Arg.number(overlap.cvPercent(), 0, Unit.PERCENT))
                    .from("source.overlap")
                    .at(AT));
        }
        List<WidthScan.Interval> even = scan.atMost(CvLimits.FIELD_PERCENT);
        findings.add((even.isEmpty()
                        ? Finding.note(Step.TRAYS, "trays.line.noWidth").from("source.cvLimits")
                        : Finding.note(
                                        Step.TRAYS,
                                        "trays.line.widths",
                                        new Arg.Series(even.stream()
                                                .<Arg>map(one -> new Arg.Span(one.from(), one.to()))
                                                .toList()))
                                .from("source.cvLimits"))
                .at(AT));
        if (overlap.edgePercent() > OverlapResult.EDGE_PERCENT) {
            findings.add(Finding.warn(Step.TRAYS, "trays.line.edge", Arg.number(overlap.edgePercent(), 0, Unit.PERCENT))
                    .from("source.lineTrays")
                    .at(AT));
        }
    }
}
