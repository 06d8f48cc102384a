package org.evenfall.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.OpeningTable;
import org.evenfall.setup.entry.FlowTableBasis;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.OpeningEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;

/** Step 0: the machine as its owner describes it. */
final class MachineAssessor {

    /** Outlets of a twin-disc machine, where no number is typed. */
    private static final int USUAL_OUTLETS = 2;

    /** Assumption: tramlines wider than the widest working width by less than this are no finding, m. */
    private static final double WIDTH_ROUNDING_M = 0.5;

    /** Rounding room in which a step still counts as no longer than the scale, share of the scale. */
    private static final double ROUNDING_SHARE = 1e-9;

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private MachineAssessor(ReadSetup read) {
        this.read = read;
    }

    static Assessed<MachineProfile> assess(ReadSetup read) {
        MachineAssessor assessor = new MachineAssessor(read);
        return new Assessed<>(assessor.machine(), assessor.findings);
    }

    private MachineProfile machine() {
        List<Double> widths = read.numbers(MachinePaths.WORKING_WIDTHS);
        width(widths);
        Double outlets = read.number(MachinePaths.OUTLETS);
        int outletCount = outlets == null ? USUAL_OUTLETS : (int) Math.round(outlets);
        Double low = read.number(MachinePaths.PTO_LOWEST);
        Double high = read.number(MachinePaths.PTO_HIGHEST);
        if (low != null && high != null && low > high) {
            findings.add(Finding.stop(Step.START, "start.ptoLimits").at(MachinePaths.PTO_LOWEST.pointer()));
        }
        return new MachineProfile(
                read.get(MachinePaths.NAME),
                widths,
                half(read.number(MachinePaths.DISC_DIAMETER)),
                read.number(MachinePaths.DISC_SPEED_AT540),
                low,
                high,
                outletCount,
                read.number(MachinePaths.WANTED_HEIGHT),
                levers(),
                openings(outletCount),
                read.number(MachinePaths.FLOW_TABLE_DENSITY),
                read.get(MachinePaths.RATE_SETTING),
                factorRule());
    }

    private static @Nullable Double half(@Nullable Double number) {
        return number == null ? null : Double.valueOf(number / 2);
    }

    /** The rule of the terminal; with a factor it must be known. */
    private FactorRule factorRule() {
        if (read.get(MachinePaths.RATE_SETTING).byFactor() && read.isBlank(MachinePaths.FACTOR_RULE)) {
            findings.add(Finding.missing(Step.START, "missing.factorRule").at(MachinePaths.FACTOR_RULE.pointer()));
        }
        return read.get(MachinePaths.FACTOR_RULE);
    }

    private void width(List<Double> widthsM) {
        Double tramlineWidthM = read.number(StartPaths.TRAMLINE_WIDTH);
        if (tramlineWidthM != null
                && !widthsM.isEmpty()
                && widthsM.stream().allMatch(width -> width < tramlineWidthM - WIDTH_ROUNDING_M)) {
            findings.add(Finding.warn(Step.START, "start.widthBeyondHandbook", read.typed(StartPaths.TRAMLINE_WIDTH))
                    .at(MachinePaths.WORKING_WIDTHS.pointer()));
        }
    }

    private List<Lever> levers() {
        List<Lever> levers = new ArrayList<>();
        Set<String> labels = new HashSet<>();
        for (int i = 0; i < read.get(MachinePaths.LEVERS).size(); i++) {
            EntryPath<LeverEntry> at = MachinePaths.LEVERS.item(i);
            LeverEntry entry = at.get(read.setup());
            Double low = read.number(MachinePaths.LEVER_LOWEST, at);
            Double high = read.number(MachinePaths.LEVER_HIGHEST, at);
            Double step = read.number(MachinePaths.LEVER_STEP, at);
            Finding problem = problem(entry, i, low, high, step);
            if (problem != null) {
                findings.add(problem.at(at.pointer()));
            } else if (!labels.add(entry.label().strip().toLowerCase(Locale.ROOT))) {
                findings.add(Finding.stop(Step.START, "start.leverTwice", Arg.text(entry.label()))
                        .at(MachinePaths.LEVER_LABEL.at(at).pointer()));
            } else if (low != null && high != null && step != null) {
                levers.add(new Lever(entry.label(), entry.unit(), low, high, step, entry.widerWhen()));
            }
        }
        return levers;
    }

    private static @Nullable Finding problem(
            LeverEntry entry, int index, @Nullable Double low, @Nullable Double high, @Nullable Double step) {
        if (entry.label().isBlank() || low == null || high == null || step == null) {
            return Finding.note(Step.START, "start.leverOpen", Arg.count(index + 1L));
        }
        return low >= high || step > (high - low) * (1 + ROUNDING_SHARE)
                ? Finding.stop(Step.START, "start.leverLimits", Arg.text(entry.label()))
                : null;
    }

    private List<FlowPoint> openings(int outlets) {
        FlowTableBasis basis = read.get(MachinePaths.FLOW_TABLE_BASIS);
        double factor = basis == FlowTableBasis.ONE_OUTLET ? outlets : 1;
        List<FlowPoint> points = new ArrayList<>();
        for (int i = 0; i < read.get(MachinePaths.OPENINGS).size(); i++) {
            EntryPath<OpeningEntry> at = MachinePaths.OPENINGS.item(i);
            Double opening = read.number(MachinePaths.OPENING_OPENING, at);
            Double flow = read.number(MachinePaths.OPENING_FLOW, at);
            if (opening != null && flow != null) {
                points.add(new FlowPoint(opening, factor * flow));
            }
        }
        if (points.size() >= 2 && !OpeningTable.usable(points)) {
            findings.add(Finding.stop(Step.START, "start.openingsOrder").at(MachinePaths.OPENINGS.pointer()));
            return List.of();
        }
        if (!points.isEmpty() && basis == FlowTableBasis.UNANSWERED) {
            findings.add(Finding.note(Step.START, "start.flowBasis").at(MachinePaths.FLOW_TABLE_BASIS.pointer()));
        }
        return points;
    }
}
