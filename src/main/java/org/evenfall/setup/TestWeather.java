package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.Choice;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Surface;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** Step 6: wind, ground and trays at the test place. */
final class TestWeather {

    private static final String SOURCE = "source.wind";

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private TestWeather(ReadSetup read) {
        this.read = read;
    }

    /** The limits for the wind, and what is to be reported of the test place. */
    static Assessed<WindLimits> assess(ReadSetup read) {
        TestWeather weather = new TestWeather(read);
        WindLimits limits = weather.limits();
        weather.wind(limits);
        weather.ground();
        return new Assessed<>(limits, weather.findings);
    }

    /**
     * A test that was driven in wind above the warning limit still counts, but this is named; above the highest limit it
     * proves nothing ({@link TestDifferences}).
     *
     * @param test number of the test, from 1
     */
    static List<Finding> duringTest(WindLimits limits, int test, @Nullable Double windMPerS, String at) {
        return windMPerS != null && limits.classify(windMPerS) == WindLimits.Strength.WARN
                ? List.of(Finding.warn(
                                Step.TRAYS,
                                "trays.drivenInWind",
                                Arg.count(test),
                                speed(windMPerS),
                                speed(limits.warnMPerS()))
                        .at(at)
                        .from(SOURCE))
                : List.of();
    }

    private static Arg speed(double mPerS) {
        return Arg.number(mPerS, 1, Unit.M_PER_S);
    }

    private WindLimits limits() {
        double note = or(read.number(TrayPaths.WIND_NOTE), WindLimits.USUAL.noteMPerS());
        double warn = or(read.number(TrayPaths.WIND_WARN), WindLimits.USUAL.warnMPerS());
        double stop = or(read.number(TrayPaths.WIND_STOP), WindLimits.USUAL.stopMPerS());
        if (note <= warn && warn <= stop) {
            return new WindLimits(note, warn, stop);
        }
        findings.add(Finding.stop(Step.TRAYS, "trays.windLimitsRise", speed(note), speed(warn), speed(stop))
                .at(TrayPaths.WIND_LIMITS.only().pointer()));
        return WindLimits.USUAL;
    }

    private static double or(@Nullable Double typed, double usual) {
        return typed == null ? usual : typed;
    }

    /** Too strong a wind stops a test still to be driven; once there are catches, the wind of each test counts. */
    private void wind(WindLimits limits) {
        List<TrayTestEntry> tests = read.get(TrayPaths.TESTS);
        wind(limits, TrayPaths.WIND.path(), tests.stream().anyMatch(TestWeather::isDriven));
        for (int i = 0; i < tests.size(); i++) {
            if (!isDriven(tests.get(i))) {
                wind(limits, TrayPaths.TEST_WIND.at(TrayPaths.TESTS.item(i)), false);
            }
        }
    }

    private void wind(WindLimits limits, EntryPath<EnteredQuantity> at, boolean driven) {
        Double wind = read.number(at);
        if (wind == null) {
            return;
        }
        Finding finding = switch (limits.classify(wind)) {
            case STOP ->
                driven
                        ? Finding.note(Step.TRAYS, "trays.windStop", speed(wind))
                        : Finding.stop(Step.TRAYS, "trays.windStop", speed(wind));
            case WARN ->
                driven
                        ? Finding.note(Step.TRAYS, "trays.windWarn", speed(wind))
                        : Finding.warn(Step.TRAYS, "trays.windWarn", speed(wind));
            case NOTE -> Finding.note(Step.TRAYS, "trays.windNote", speed(wind));
            case CALM -> null;
        };
        if (finding != null) {
            findings.add(finding.at(at.pointer()).from(SOURCE));
        }
    }

    private static boolean isDriven(TrayTestEntry test) {
        return !TrayPaths.TEST_CATCHES.isBlank(test.catches());
    }

    private void ground() {
        warnIfNo(TrayPaths.TUBES_DRY, "trays.wet");
        warnIfNo(TrayPaths.TRAYS_LEVEL, "trays.notLevel");
        warnIfNo(TrayPaths.CLEAR_OF_WHEELMARKS, "trays.wheelmarks");
        if (read.get(TrayPaths.SURFACE) == Surface.HARD_FLOOR) {
            findings.add(Finding.warn(Step.TRAYS, "trays.bounce")
                    .at(TrayPaths.SURFACE.pointer())
                    .from("source.bounce"));
        }
    }

    private void warnIfNo(Choice<?, YesNo> question, String key) {
        if (read.get(question) == YesNo.NO) {
            findings.add(Finding.warn(Step.TRAYS, key).from("source.practice").at(question.pointer()));
        }
    }
}
