package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.WheelMarks;
import org.jspecify.annotations.Nullable;

/**
 * Step 6, before driving: trays and where the wheels run.
 *
 * @param areaM2 catching area of one tray
 * @param acrossM its side across the travel
 * @param typedTrays number of trays; null where none is typed
 * @param marks where the wheels run
 * @param driving how the passes follow each other; back and forth while it is not answered
 */
record TestGround(
        double areaM2, double acrossM, @Nullable Integer typedTrays, WheelMarks marks, DrivingPattern driving) {

    /** Common practice: side of a tray where none is typed, m. */
    private static final double USUAL_SIDE_M = 0.5;

    static TestGround of(ReadSetup read) {
        double acrossM = or(read.number(TrayPaths.TRAY_WIDTH), USUAL_SIDE_M);
        Double count = read.number(TrayPaths.TRAY_COUNT);
        return new TestGround(
                acrossM * or(read.number(TrayPaths.TRAY_LENGTH), USUAL_SIDE_M),
                acrossM,
                count == null ? null : Integer.valueOf((int) Math.round(count)),
                new WheelMarks(
                        or(read.number(TrayPaths.TRACK), WheelMarks.USUAL.trackM()),
                        or(read.number(TrayPaths.TYRE), WheelMarks.USUAL.tyreM())),
                SetNow.driving(read));
    }

    private static double or(@Nullable Double typed, double usual) {
        return typed == null ? usual : typed;
    }

    /** Where the trays of a new test are, out of the wheel marks; as many as are proposed where none is typed. */
    TrayLayout layout(double widthM) {
        int trays = typedTrays == null ? TrayLayouts.proposedTrays(widthM) : typedTrays;
        return TrayLayouts.asideFrom(marks, TrayLayouts.of(widthM, trays, areaM2, driving), acrossM);
    }

    /**
     * Where the trays of a test without positions are, m: spaced evenly, out of the wheel marks, as every test was before
     * its positions were kept with it.
     *
     * @param caught number of its catches; so many trays where none is typed, at least 5 and at most 33
     */
    List<Double> evenPlacesM(double widthM, int caught) {
        int trays = typedTrays == null
                ? Math.max(TrayLayouts.FEWEST_TRAYS, Math.min(TrayLayouts.MOST_TRAYS, caught))
                : typedTrays;
        return TrayLayouts.asideFrom(marks, TrayLayouts.even(widthM, trays, areaM2, driving), acrossM)
                .positionsM();
    }

    /** Which trays of a layout were moved out of the wheel marks, and which could not be. */
    static List<Finding> findings(TrayLayout layout) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < layout.movedM().size(); i++) {
            double moved = layout.movedM().get(i);
            if (moved != 0) {
                findings.add(Finding.note(
                                Step.TRAYS,
                                moved < 0 ? "trays.movedLeft" : "trays.movedRight",
                                Arg.count(i + 1L),
                                Arg.number(Math.abs(moved), 2, Unit.M),
                                Arg.number(layout.positionsM().get(i), 2, Unit.M))
                        .from("source.wheelMarks")
                        .at(TrayPaths.WHEELS.only().pointer()));
            }
        }
        for (int tray : layout.inWheelMarks()) {
            findings.add(Finding.warn(Step.TRAYS, "trays.inWheelmark", Arg.count(tray + 1L))
                    .from("source.wheelMarks")
                    .at(TrayPaths.TRAY_COUNT.pointer()));
        }
        return findings;
    }
}
