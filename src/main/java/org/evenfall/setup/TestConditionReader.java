package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.SettingsPaths;
import org.evenfall.setup.path.TestConditionPaths;
import org.evenfall.setup.path.Text;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Tramlines;
import org.jspecify.annotations.Nullable;

/** What a tray test was driven under. What the test does not state counts as it is set now, and is listed. */
final class TestConditionReader {

    private final ReadSetup read;
    private final EntryPath<TrayTestEntry> test;
    private final EntryPath<TestConditionEntries> at;
    private final List<String> assumed = new ArrayList<>();

    private TestConditionReader(ReadSetup read, EntryPath<TrayTestEntry> test) {
        this.read = read;
        this.test = test;
        this.at = TrayPaths.TEST_CONDITIONS.at(test);
    }

    /**
     * The conditions of a test.
     *
     * @param set the whole state in the test
     * @param windMPerS wind in the test, m/s; null where neither it nor the wind now is known
     * @param assumed label keys of what the test does not state and is taken as it is now
     */
    record Conditions(MachineSet set, @Nullable Double windMPerS, List<String> assumed) {}

    /**
     * Reads the conditions of a test.
     *
     * @param stated settings as the test states them
     * @param now what counts where the test states nothing
     */
    static Conditions of(ReadSetup read, EntryPath<TrayTestEntry> test, ReadSettings stated, MachineSet now) {
        TestConditionReader reader = new TestConditionReader(read, test);
        MachineSet set = reader.set(stated, now);
        Double windMPerS = reader.wind();
        return new Conditions(set, windMPerS, List.copyOf(reader.assumed));
    }

    /** How the field was driven in a test; as now where the test does not state it. */
    static Tramlines tramlines(ReadSetup read, EntryPath<TrayTestEntry> test, Tramlines now) {
        TestConditionReader reader = new TestConditionReader(read, test);
        return new Tramlines(reader.width(now.widthM()), reader.driving(now.pattern()));
    }

    private MachineSet set(ReadSettings stated, MachineSet now) {
        TestConditions today = now.conditions();
        Tramlines tramlines = new Tramlines(
                width(today.tramlines().widthM()), driving(today.tramlines().pattern()));
        TestConditions conditions = new TestConditions(
                tramlines,
                height(stated, today.heightOverRimM()),
                number(TestConditionPaths.SPEED, today.speedKmPerH()),
                number(TestConditionPaths.PRODUCT_RATE, today.productKgPerHa()),
                text(TestConditionPaths.PRODUCT, today.product()),
                text(TestConditionPaths.DELIVERY, today.delivery()),
                read.number(TestConditionPaths.BULK_DENSITY, at),
                read.number(TestConditionPaths.MEDIAN_SIZE, at),
                TestConditionPaths.PART_CHANGED.at(at).get(read.setup()) == YesNo.YES);
        return new MachineSet(conditions, settings(stated, now.settings()), openings(now.openings()));
    }

    private double width(double nowM) {
        Double stated = number(TestConditionPaths.TRAMLINE_WIDTH, nowM);
        return stated == null ? nowM : stated;
    }

    private DrivingPattern driving(DrivingPattern now) {
        DrivingPattern stated = TestConditionPaths.DRIVING_PATTERN.at(at).get(read.setup());
        if (TestConditionPaths.DRIVING_PATTERN.isBlank(stated)) {
            assumed.add(TestConditionPaths.DRIVING_PATTERN.labelKey());
            return now;
        }
        return stated;
    }

    /** An older test states a height over the crop only. */
    private @Nullable Double height(ReadSettings stated, @Nullable Double now) {
        if (read.number(TestConditionPaths.HEIGHT_OVER_RIM, at) == null && stated.heightOverCropM() != null) {
            return stated.heightOverCropM();
        }
        return number(TestConditionPaths.HEIGHT_OVER_RIM, now);
    }

    private ReadSettings settings(ReadSettings stated, ReadSettings now) {
        if (stated.ptoRpm() == null && now.ptoRpm() != null) {
            assumed.add(SettingsPaths.PTO_SPEED.labelKey());
        }
        if (stated.levers().isEmpty() && !now.levers().isEmpty()) {
            assumed.add(SettingsPaths.LEVERS.labelKey());
        }
        return new ReadSettings(
                stated.levers().isEmpty() ? now.levers() : stated.levers(),
                stated.ptoRpm() == null ? now.ptoRpm() : stated.ptoRpm(),
                stated.heightOverCropM() == null ? now.heightOverCropM() : stated.heightOverCropM(),
                stated.tiltDeg() == null ? now.tiltDeg() : stated.tiltDeg());
    }

    private @Nullable Double wind() {
        Double stated = read.number(TrayPaths.TEST_WIND, test);
        Double now = read.number(TrayPaths.WIND);
        if (stated != null || now == null) {
            return stated;
        }
        assume(TrayPaths.TEST_WIND, TrayPaths.TEST_WIND.at(test).get(read.setup()), true);
        return now;
    }

    private Openings openings(Openings now) {
        Openings stated = Openings.of(
                read.number(TrayPaths.TEST_OPENING_LEFT, test), read.number(TrayPaths.TEST_OPENING_RIGHT, test));
        if (stated.known()) {
            return stated;
        }
        if (now.known()) {
            assumed.add(TrayPaths.TEST_OPENING_LEFT.labelKey());
        }
        return now;
    }

    private @Nullable Double number(Quantity<TestConditionEntries> entry, @Nullable Double now) {
        Double stated = read.number(entry, at);
        if (stated != null) {
            return stated;
        }
        assume(entry, entry.at(at).get(read.setup()), now != null);
        return now;
    }

    private String text(Text<TestConditionEntries> entry, String now) {
        String stated = entry.at(at).get(read.setup()).strip();
        if (!stated.isEmpty()) {
            return stated;
        }
        if (!now.isEmpty()) {
            assumed.add(entry.labelKey());
        }
        return now;
    }

    /** What is typed but cannot be read has a finding of its own. */
    private void assume(Entry<?, EnteredQuantity> entry, EnteredQuantity typed, boolean known) {
        if (known && typed.isBlank()) {
            assumed.add(entry.labelKey());
        }
    }
}
