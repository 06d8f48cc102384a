package org.evenfall.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.OpeningTable;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.FlowTableBasis;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** Step 0: the job and the machine. */
final class StartAssessor {

    private StartAssessor() {}

    /** Tramline width, m; null until it can be read. */
    static @Nullable Double tramlineWidthM(Setup setup, EntryReader reader) {
        reader.need(!setup.start().farm().isBlank(), Step.START, "missing.farm", "/start/farm");
        reader.need(!setup.start().crop().isBlank(), Step.START, "missing.crop", "/start/crop");
        reader.need(
                setup.start().drivingPattern() != DrivingPattern.UNANSWERED,
                Step.START,
                "missing.drivingPattern",
                "/start/drivingPattern");
        Double width = reader.read(setup.start().tramlineWidth(), Fields.TRAMLINE_WIDTH, "/start/tramlineWidth");
        reader.need(
                width != null || !setup.start().tramlineWidth().isBlank(),
                Step.START,
                "missing.tramlineWidth",
                "/start/tramlineWidth");
        return width;
    }

    static MachineProfile machine(Setup setup, @Nullable Double tramlineWidthM, EntryReader reader) {
        MachineEntries entries = setup.machine();
        reader.need(!entries.name().isBlank(), Step.START, "missing.machine", "/machine/name");
        List<Double> widths = reader.readAll(entries.workingWidths(), Fields.WORKING_WIDTH, "/machine/workingWidths");
        if (tramlineWidthM != null && !widths.isEmpty() && widths.stream().allMatch(w -> w < tramlineWidthM - 0.5)) {
            reader.add(Finding.warn(Step.START, "start.widthBeyondHandbook", Arg.number(tramlineWidthM, 0, Unit.M))
                    .at("/machine/workingWidths"));
        }
        Double outlets = reader.read(entries.outlets(), Fields.OUTLETS, "/machine/outlets");
        Double low = reader.read(entries.ptoLowest(), Fields.PTO_LIMIT, "/machine/ptoLowest");
        Double high = reader.read(entries.ptoHighest(), Fields.PTO_LIMIT, "/machine/ptoHighest");
        if (low != null && high != null && low > high) {
            reader.add(Finding.stop(Step.START, "start.ptoLimits").at("/machine/ptoLowest"));
        }
        Double discRadiusCm = reader.read(entries.discRadius(), Fields.DISC_RADIUS, "/machine/discRadius");
        Double heightCm =
                reader.read(entries.wantedHeight(), Fields.HEIGHT_OVER_CROP, "/machine/wantedHeight", Step.START);
        return new MachineProfile(
                entries.name(),
                widths,
                discRadiusCm == null ? null : Double.valueOf(discRadiusCm / 100),
                reader.read(entries.discSpeedAt540(), Fields.DISC_SPEED, "/machine/discSpeedAt540"),
                low,
                high,
                outlets == null ? 2 : (int) Math.round(outlets),
                heightCm == null ? null : Double.valueOf(heightCm / 100),
                levers(entries.levers(), reader),
                openings(entries, outlets == null ? 2 : outlets, reader),
                reader.read(entries.flowTableDensity(), Fields.BULK_DENSITY, "/machine/flowTableDensity", Step.START));
    }

    private static List<Lever> levers(List<LeverEntry> entries, EntryReader reader) {
        List<Lever> levers = new ArrayList<>();
        Set<String> labels = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            LeverEntry entry = entries.get(i);
            String at = "/machine/levers/" + i;
            Double low = reader.read(entry.lowest(), Fields.LEVER_VALUE, at + "/lowest");
            Double high = reader.read(entry.highest(), Fields.LEVER_VALUE, at + "/highest");
            Double step = reader.read(entry.step(), Fields.LEVER_STEP, at + "/step");
            if (entry.label().isBlank() || low == null || high == null || step == null) {
                reader.add(Finding.note(Step.START, "start.leverOpen", Arg.count(i + 1L))
                        .at(at));
            } else if (low >= high || step > high - low) {
                reader.add(Finding.stop(Step.START, "start.leverLimits", Arg.text(entry.label()))
                        .at(at));
            } else if (!labels.add(entry.label().strip().toLowerCase(Locale.ROOT))) {
                reader.add(Finding.stop(Step.START, "start.leverTwice", Arg.text(entry.label()))
                        .at(at + "/label"));
            } else {
                levers.add(new Lever(entry.label(), entry.unit(), low, high, step, entry.widerWhen()));
            }
        }
        return levers;
    }

    private static List<FlowPoint> openings(MachineEntries entries, double outlets, EntryReader reader) {
        double factor = entries.flowTableBasis() == FlowTableBasis.ONE_OUTLET ? outlets : 1;
        List<FlowPoint> points = new ArrayList<>();
        for (int i = 0; i < entries.openings().size(); i++) {
            String at = "/machine/openings/" + i;
            Double opening = reader.read(entries.openings().get(i).opening(), Fields.OPENING, at + "/opening");
            Double flow = reader.read(entries.openings().get(i).flow(), Fields.FLOW, at + "/flow");
            if (opening != null && flow != null) {
                points.add(new FlowPoint(opening, factor * flow));
            }
        }
        if (points.size() >= 2 && !OpeningTable.usable(points)) {
            reader.add(Finding.stop(Step.START, "start.openingsOrder").at("/machine/openings"));
            return List.of();
        }
        if (!points.isEmpty() && entries.flowTableBasis() == FlowTableBasis.UNANSWERED) {
            reader.add(Finding.note(Step.START, "start.flowBasis").at("/machine/flowTableBasis"));
        }
        return points;
    }
}
