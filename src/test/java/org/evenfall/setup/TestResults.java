package org.evenfall.setup;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.Uniformity;

/** Results of tray tests as the tests of other rooms need them. */
public final class TestResults {

    /** It proves what is set now. */
    public static final TrayTestResult.TestProof PROVES = new TrayTestResult.TestProof(true, List.of(), List.of());

    private TestResults() {}

    /** A test that proves what is set now. */
    public static TrayTestResult proving(
            int index, String date, double widthM, Uniformity evenness, ReadSettings settings) {
        return new TrayTestResult(index, date, evenness, settings, null, null, null, conditions(widthM), PROVES);
    }

    /** Only the width and the driving pattern are known. */
    public static TestConditions conditions(double widthM) {
        return new TestConditions(
                new Tramlines(widthM, DrivingPattern.BACK_AND_FORTH), null, null, null, "", "", null, null, false);
    }

    /** What a setup is set to, with nothing planned or checked; null without a width. */
    static MachineSet now(TypedSetup typed, MachineProfile machine, ProductResult product) {
        ReadSetup read = typed.read();
        Double widthM = read.number(StartPaths.TRAMLINE_WIDTH);
        return widthM == null
                ? null
                : SetNow.of(
                        read,
                        widthM,
                        machine,
                        product,
                        new ReadSettings(Map.of(), null, null, null),
                        new MachineCheckResult(
                                List.of(), List.of(), List.of(), List.of(), null, null, null, null, false),
                        null,
                        new RateResult(null, null, List.of(), null));
    }
}
