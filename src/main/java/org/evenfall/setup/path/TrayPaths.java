package org.evenfall.setup.path;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.machine.Side;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SinglePassTrayEntry;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.WheelEntries;
import org.evenfall.setup.entry.WindLimitEntries;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.Surface;

/** The tray test: entries of step 6. */
public final class TrayPaths {

    /** The record of this step. */
    public static final Part<TrayEntries> TRAYS = Part.top("trays", Step.TRAYS, Setup::trays, Setup::withTrays);

    /** Tray along the travel, cm, m or in. */
    public static final Quantity<TrayEntries> TRAY_LENGTH = TRAYS.quantity(
            "trayLength", "trays.length", Ranges.TRAY_SIDE, TrayEntries::trayLength, TrayEntries::withTrayLength);

    /** Tray across, cm, m or in. */
    public static final Quantity<TrayEntries> TRAY_WIDTH = TRAYS.quantity(
            "trayWidth", "trays.width", Ranges.TRAY_SIDE, TrayEntries::trayWidth, TrayEntries::withTrayWidth);

    /** Number of trays; unless typed 7, from 28 m on 9 to 13 by the width. */
    public static final Quantity<TrayEntries> TRAY_COUNT =
            TRAYS.quantity("trayCount", Ranges.TRAY_COUNT, TrayEntries::trayCount, TrayEntries::withTrayCount);

    /** MASS, VOLUME or HEIGHT. */
    public static final Choice<TrayEntries, AmountKind> CATCH_KIND = TRAYS.choice(
                    "catchKind", "trays.kind", AmountKind.class, TrayEntries::catchKind, TrayEntries::withCatchKind)
            .only(List.of(AmountKind.MASS, AmountKind.VOLUME, AmountKind.HEIGHT));

    /** Inner diameter of the tube, mm. */
    public static final Quantity<TrayEntries> TUBE_BORE =
            TRAYS.quantity("tubeBore", Ranges.TUBE_BORE, TrayEntries::tubeBore, TrayEntries::withTubeBore);

    /** Smallest step read on scale, cylinder or tube. */
    public static final Quantity<TrayEntries> READING_STEP = TRAYS.quantity(
            "readingStep",
            "field.readingStep",
            RangeRules.READING_STEP,
            TrayEntries::readingStep,
            TrayEntries::withReadingStep);

    /** Where the tractor's wheels run. */
    public static final Part<WheelEntries> WHEELS = TRAYS.part("wheels", TrayEntries::wheels, TrayEntries::withWheels);

    /** Wind at the test place now. */
    public static final Quantity<TrayEntries> WIND =
            TRAYS.quantity("wind", Ranges.WIND, TrayEntries::wind, TrayEntries::withWind);

    /** The owner's limits for it. */
    public static final Part<WindLimitEntries> WIND_LIMITS =
            TRAYS.part("windLimits", TrayEntries::windLimits, TrayEntries::withWindLimits);

    /** What is under the trays. */
    public static final Choice<TrayEntries, Surface> SURFACE =
            TRAYS.choice("surface", "trays.surface", Surface.class, TrayEntries::surface, TrayEntries::withSurface);

    /** Trays level. */
    public static final Choice<TrayEntries, YesNo> TRAYS_LEVEL = TRAYS.choice(
            "traysLevel", "trays.level", YesNo.class, TrayEntries::traysLevel, TrayEntries::withTraysLevel);

    /** Trays and tubes dry. */
    public static final Choice<TrayEntries, YesNo> TUBES_DRY =
            TRAYS.choice("tubesDry", "trays.dry", YesNo.class, TrayEntries::tubesDry, TrayEntries::withTubesDry);

    /** Aside from wheel marks. */
    public static final Choice<TrayEntries, YesNo> CLEAR_OF_WHEELMARKS = TRAYS.choice(
            "clearOfWheelmarks",
            "trays.aside",
            YesNo.class,
            TrayEntries::clearOfWheelmarks,
            TrayEntries::withClearOfWheelmarks);

    /** Tests, oldest first. */
    public static final Rows<TrayEntries, TrayTestEntry> TESTS = TRAYS.rows(
                    "tests", "trays.tests", TrayTestEntry.EMPTY, TrayEntries::tests, TrayEntries::withTests)
            .neededByAssessment();

    /** Trays of the long line under one pass, in any order. */
    public static final Rows<TrayEntries, SinglePassTrayEntry> LINE =
            TRAYS.rows("line", "trays.line", SinglePassTrayEntry.EMPTY, TrayEntries::line, TrayEntries::withLine);

    /** Whether two levers may be moved at once. */
    public static final Choice<TrayEntries, YesNo> TWO_LEVERS = TRAYS.choice(
            "twoLevers", "trays.twoLevers", YesNo.class, TrayEntries::twoLevers, TrayEntries::withTwoLevers);

    /** Border device and how it is set. */
    public static final Text<TrayEntries> BORDER_DEVICE =
            TRAYS.text("borderDevice", "trays.borderDevice", TrayEntries::borderDevice, TrayEntries::withBorderDevice);

    /** Which side. */
    public static final Choice<TrayEntries, Side> BORDER_SIDE = TRAYS.choice(
            "borderSide", "trays.borderSide", Side.class, TrayEntries::borderSide, TrayEntries::withBorderSide);

    /** Discs from the headland tramline when the outlets open, m or ft; plus: into the field. */
    public static final Quantity<TrayEntries> SWITCH_ON = TRAYS.quantity(
            "switchOn", "trays.switchOn", Ranges.SWITCH_DISTANCE, TrayEntries::switchOn, TrayEntries::withSwitchOn);

    /** Discs from the headland tramline when the outlets close, m or ft; plus: into the field. */
    public static final Quantity<TrayEntries> SWITCH_OFF = TRAYS.quantity(
            "switchOff", "trays.switchOff", Ranges.SWITCH_DISTANCE, TrayEntries::switchOff, TrayEntries::withSwitchOff);

    /** Middle of the left wheel to middle of the right, m, cm or ft. */
    public static final Quantity<WheelEntries> TRACK =
            WHEELS.quantity("track", Ranges.TRACK, WheelEntries::track, WheelEntries::withTrack);

    /** Width of a tyre or pair of tyres, cm, mm or in. */
    public static final Quantity<WheelEntries> TYRE =
            WHEELS.quantity("tyre", Ranges.TYRE, WheelEntries::tyre, WheelEntries::withTyre);

    /** Above this a note, 2 m/s unless typed. */
    public static final Quantity<WindLimitEntries> WIND_NOTE = WIND_LIMITS.quantity(
            "note", "trays.windNoteAbove", Ranges.WIND_LIMIT, WindLimitEntries::note, WindLimitEntries::withNote);

    /** Above this a warning, 3 m/s unless typed. */
    public static final Quantity<WindLimitEntries> WIND_WARN = WIND_LIMITS.quantity(
            "warn", "trays.windWarnAbove", Ranges.WIND_LIMIT, WindLimitEntries::warn, WindLimitEntries::withWarn);

    /** Above this no test, 4 m/s unless typed. */
    public static final Quantity<WindLimitEntries> WIND_STOP = WIND_LIMITS.quantity(
            "stop", "trays.windStopAbove", Ranges.WIND_LIMIT, WindLimitEntries::stop, WindLimitEntries::withStop);

    /** ISO date, may be empty. */
    public static final Text<TrayTestEntry> TEST_DATE =
            TESTS.row().date("date", "trays.date", TrayTestEntry::date, TrayTestEntry::withDate);

    /** How the machine was set. */
    public static final Nested<TrayTestEntry, SettingsEntries> TEST_SETTINGS =
            TESTS.row().nested("settings", TrayTestEntry::settings, TrayTestEntry::withSettings);

    /** Opening left. */
    public static final Quantity<TrayTestEntry> TEST_OPENING_LEFT = TESTS.row()
            .quantity(
                    "openingLeft",
                    "rate.openingLeft",
                    RangeRules.OPENING,
                    TrayTestEntry::openingLeft,
                    TrayTestEntry::withOpeningLeft)
            .labelledWhen(RangeRules::byFactor, "rate.factor");

    /** Opening right. */
    public static final Quantity<TrayTestEntry> TEST_OPENING_RIGHT = TESTS.row()
            .quantity(
                    "openingRight",
                    "rate.openingRight",
                    RangeRules.OPENING,
                    TrayTestEntry::openingRight,
                    TrayTestEntry::withOpeningRight)
            .labelledWhen(RangeRules::byFactor, "rate.factor");

    /** How many times the three passes were driven. */
    public static final Quantity<TrayTestEntry> TEST_RUNS =
            TESTS.row().quantity("runs", "trays.runs", Ranges.RUNS, TrayTestEntry::runs, TrayTestEntry::withRuns);

    /** Wind speed, m/s, km/h or mph. */
    public static final Quantity<TrayTestEntry> TEST_WIND =
            TESTS.row().quantity("wind", Ranges.WIND, TrayTestEntry::wind, TrayTestEntry::withWind);

    /** True positions, m, negative left; empty: spaced evenly. */
    public static final QuantityList<TrayTestEntry> TEST_POSITIONS = TESTS.row()
            .quantities(
                    "positions",
                    "trays.positions",
                    Ranges.TRAY_POSITION,
                    TrayTestEntry::positions,
                    TrayTestEntry::withPositions);

    /** Catch of each tray, all runs together; an empty text: spilt. */
    public static final QuantityList<TrayTestEntry> TEST_CATCHES = TESTS.row()
            .quantities(
                    "catches", "trays.catches", RangeRules.CATCH, TrayTestEntry::catches, TrayTestEntry::withCatches)
            .summed();

    /** Free text. */
    public static final Text<TrayTestEntry> TEST_REMARK =
            TESTS.row().text("remark", "trays.remark", TrayTestEntry::remark, TrayTestEntry::withRemark);

    /** What else the test was driven under. */
    public static final Nested<TrayTestEntry, TestConditionEntries> TEST_CONDITIONS =
            TESTS.row().nested("conditions", TrayTestEntry::conditions, TrayTestEntry::withConditions);

    /** Position across the travel, m or ft, negative left. */
    public static final Quantity<SinglePassTrayEntry> LINE_POSITION = LINE.row()
            .quantity(
                    "position",
                    "trays.line.position",
                    Ranges.TRAY_POSITION,
                    SinglePassTrayEntry::position,
                    SinglePassTrayEntry::withPosition);

    /** What it caught, read as the trays of the test are. */
    public static final Quantity<SinglePassTrayEntry> LINE_AMOUNT = LINE.row()
            .quantity(
                    "amount",
                    "trays.line.amount",
                    RangeRules.LINE_CATCH,
                    SinglePassTrayEntry::amount,
                    SinglePassTrayEntry::withAmount)
            .summed();

    private TrayPaths() {}
}
