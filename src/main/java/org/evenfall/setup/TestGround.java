package org.evenfall.setup;

import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.Surface;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.WheelMarks;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/**
 * Step 6, before driving: trays, wheel marks, weather, ground.
 *
 * @param areaM2 catching area of one tray
 * @param acrossM its side across the travel
 * @param trays number of trays
 * @param marks where the wheels run
 * @param gate limits for the wind
 */
record TestGround(double areaM2, double acrossM, int trays, WheelMarks marks, WindLimits gate) {

    /** Side of a tray where none was typed, m. */
    private static final double USUAL_SIDE_M = 0.5;

    static TestGround read(Setup setup, MachineCheckResult machineCheck, EntryReader reader) {
        TrayEntries entries = setup.trays();
        Double length = reader.read(entries.trayLength(), Fields.TRAY_SIDE, "/trays/trayLength");
        Double across = reader.read(entries.trayWidth(), Fields.TRAY_SIDE, "/trays/trayWidth");
        Double count = reader.read(entries.trayCount(), Fields.TRAY_COUNT, "/trays/trayCount");
        Double track = reader.read(entries.wheels().track(), Fields.TRACK, "/trays/wheels/track");
        Double tyre = reader.read(entries.wheels().tyre(), Fields.TYRE, "/trays/wheels/tyre");
        double acrossM = across == null ? USUAL_SIDE_M : across / 100;
        WindLimits gate = gate(entries, reader);
        wind(entries, gate, reader);
        ground(entries, reader);
        if (machineCheck.blocksFieldTest()) {
            reader.add(Finding.stop(Step.TRAYS, "trays.yardFirst").at("/yard"));
        }
        return new TestGround(
                acrossM * (length == null ? USUAL_SIDE_M : length / 100),
                acrossM,
                count == null ? TrayLayouts.USUAL_TRAYS : (int) Math.round(count),
                new WheelMarks(
                        track == null ? WheelMarks.USUAL.trackM() : track,
                        tyre == null ? WheelMarks.USUAL.tyreM() : tyre / 100),
                gate);
    }

    /** Where the trays stand, aside from the wheel marks; says which were moved and which could not be. */
    TrayLayout layout(double widthM, DrivingPattern driving, EntryReader reader) {
        TrayLayout layout = TrayLayouts.asideFrom(marks, TrayLayouts.of(widthM, trays, areaM2, driving), acrossM);
        for (int i = 0; i < trays; i++) {
            double moved = layout.movedM().get(i);
            if (moved != 0) {
                reader.add(Finding.note(
                                Step.TRAYS,
                                moved < 0 ? "trays.movedLeft" : "trays.movedRight",
                                Arg.count(i + 1L),
                                Arg.number(Math.abs(moved), 2, Unit.M),
                                Arg.number(layout.positionsM().get(i), 2, Unit.M))
                        .at("/trays/wheels"));
            }
        }
        for (int tray : layout.inWheelMarks()) {
            reader.add(Finding.warn(Step.TRAYS, "trays.inWheelmark", Arg.count(tray + 1L))
                    .at("/trays/trayCount"));
        }
        return layout;
    }

    private static WindLimits gate(TrayEntries entries, EntryReader reader) {
        Double note = reader.read(entries.windLimits().note(), Fields.WIND_LIMIT, "/trays/windLimits/note");
        Double warn = reader.read(entries.windLimits().warn(), Fields.WIND_LIMIT, "/trays/windLimits/warn");
        Double stop = reader.read(entries.windLimits().stop(), Fields.WIND_LIMIT, "/trays/windLimits/stop");
        double noteMPerS = or(note, WindLimits.USUAL.noteMPerS());
        double warnMPerS = or(warn, WindLimits.USUAL.warnMPerS());
        double stopMPerS = or(stop, WindLimits.USUAL.stopMPerS());
        if (!(noteMPerS <= warnMPerS && warnMPerS <= stopMPerS)) {
            reader.add(Finding.stop(
                            Step.TRAYS,
                            "trays.windLimitsRise",
                            Arg.number(noteMPerS, 1, Unit.M_PER_S),
                            Arg.number(warnMPerS, 1, Unit.M_PER_S),
                            Arg.number(stopMPerS, 1, Unit.M_PER_S))
                    .at("/trays/windLimits"));
            return WindLimits.USUAL;
        }
        return new WindLimits(noteMPerS, warnMPerS, stopMPerS);
    }

    private static double or(@Nullable Double typed, double usual) {
        return typed == null ? usual : typed;
    }

    /** Too strong a wind stops a test still to be driven; once there are catches, the wind of each test counts. */
    private static void wind(TrayEntries entries, WindLimits gate, EntryReader reader) {
        Double wind = reader.read(entries.wind(), Fields.WIND, "/trays/wind");
        if (wind == null) {
            return;
        }
        Arg speed = Arg.number(wind, 1, Unit.M_PER_S);
        boolean driven = entries.tests().stream().anyMatch(test -> ProductAssessor.anyTyped(test.catches()));
        Finding told = switch (gate.classify(wind)) {
            case STOP ->
                driven
                        ? Finding.note(Step.TRAYS, "trays.windStop", speed)
                        : Finding.stop(Step.TRAYS, "trays.windStop", speed);
            case WARN ->
                driven
                        ? Finding.note(Step.TRAYS, "trays.windWarn", speed)
                        : Finding.warn(Step.TRAYS, "trays.windWarn", speed);
            case NOTE -> Finding.note(Step.TRAYS, "trays.windNote", speed);
            case CALM -> null;
        };
        if (told != null) {
            reader.add(told.at("/trays/wind").from("source.wind"));
        }
    }

    private static void ground(TrayEntries entries, EntryReader reader) {
        if (entries.tubesDry() == YesNo.NO) {
            reader.add(Finding.warn(Step.TRAYS, "trays.wet").at("/trays/tubesDry"));
        }
        if (entries.traysLevel() == YesNo.NO) {
            reader.add(Finding.warn(Step.TRAYS, "trays.notLevel").at("/trays/traysLevel"));
        }
        if (entries.clearOfWheelmarks() == YesNo.NO) {
            reader.add(Finding.warn(Step.TRAYS, "trays.wheelmarks").at("/trays/clearOfWheelmarks"));
        }
        if (entries.surface() == Surface.HARD_FLOOR) {
            reader.add(Finding.warn(Step.TRAYS, "trays.bounce")
                    .at("/trays/surface")
                    .from("source.bounce"));
        }
    }
}
