package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.Side;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.entry.VaneEntry;

/** The machine check: entries of step 3. */
public final class MachineCheckPaths {

    /** The record of this step. */
    public static final Part<MachineCheckEntries> MACHINE_CHECK =
            Part.top("yard", Step.MACHINE, Setup::machineCheck, Setup::withMachineCheck);

    /** Each vane. */
    public static final Rows<MachineCheckEntries, VaneEntry> VANES = MACHINE_CHECK
            .rows("vanes", "yard.vanes", VaneEntry.EMPTY, MachineCheckEntries::vanes, MachineCheckEntries::withVanes)
            .neededByAssessment();

    /** Each part. */
    public static final Rows<MachineCheckEntries, CheckEntry> CHECKS = MACHINE_CHECK
            .rows(
                    "checks",
                    "yard.parts",
                    new CheckEntry(CheckItem.GUARDS, CheckAnswer.UNANSWERED, "", UnknownKeys.NONE),
                    MachineCheckEntries::checks,
                    MachineCheckEntries::withChecks)
            .neededByAssessment();

    /** Height of the frame at the left, cm, m or in. */
    public static final Quantity<MachineCheckEntries> HEIGHT_LEFT = MACHINE_CHECK
            .quantity(
                    "heightLeft",
                    "yard.heightLeft",
                    Ranges.FRAME_HEIGHT,
                    MachineCheckEntries::heightLeft,
                    MachineCheckEntries::withHeightLeft)
            .neededByAssessment();

    /** At the right. */
    public static final Quantity<MachineCheckEntries> HEIGHT_RIGHT = MACHINE_CHECK
            .quantity(
                    "heightRight",
                    "yard.heightRight",
                    Ranges.FRAME_HEIGHT,
                    MachineCheckEntries::heightRight,
                    MachineCheckEntries::withHeightRight)
            .neededByAssessment();

    /** Tilt measured, °. */
    public static final Quantity<MachineCheckEntries> TILT =
            MACHINE_CHECK.quantity("tilt", Ranges.TILT, MachineCheckEntries::tilt, MachineCheckEntries::withTilt);

    /** Tyre pressure left, bar. */
    public static final Quantity<MachineCheckEntries> TYRE_LEFT = MACHINE_CHECK.quantity(
            "tyreLeft",
            "yard.tyreLeft",
            Ranges.TYRE_PRESSURE,
            MachineCheckEntries::tyreLeft,
            MachineCheckEntries::withTyreLeft);

    /** Tyre pressure right, bar. */
    public static final Quantity<MachineCheckEntries> TYRE_RIGHT = MACHINE_CHECK.quantity(
            "tyreRight",
            "yard.tyreRight",
            Ranges.TYRE_PRESSURE,
            MachineCheckEntries::tyreRight,
            MachineCheckEntries::withTyreRight);

    /** PTO speed measured, rpm. */
    public static final Quantity<MachineCheckEntries> PTO_MEASURED = MACHINE_CHECK
            .quantity(
                    "ptoMeasured",
                    "yard.ptoMeasured",
                    Ranges.PTO_SPEED,
                    MachineCheckEntries::ptoMeasured,
                    MachineCheckEntries::withPtoMeasured)
            .neededByAssessment();

    /** Measured with what. */
    public static final Text<MachineCheckEntries> PTO_INSTRUMENT = MACHINE_CHECK.text(
            "ptoInstrument",
            "yard.ptoInstrument",
            MachineCheckEntries::ptoInstrument,
            MachineCheckEntries::withPtoInstrument);

    /** Engine speed that gives the PTO speed, rpm. */
    public static final Quantity<MachineCheckEntries> ENGINE_SPEED = MACHINE_CHECK.quantity(
            "engineSpeed", Ranges.ENGINE_SPEED, MachineCheckEntries::engineSpeed, MachineCheckEntries::withEngineSpeed);

    /** Gear that gives the PTO speed. */
    public static final Text<MachineCheckEntries> GEAR =
            MACHINE_CHECK.text("gear", "yard.gear", MachineCheckEntries::gear, MachineCheckEntries::withGear);

    /** Typed reason to go on with a vane that failed. */
    public static final Text<MachineCheckEntries> VANE_OVERRIDE_REASON = MACHINE_CHECK.text(
            "vaneOverrideReason",
            "yard.vaneReason",
            MachineCheckEntries::vaneOverrideReason,
            MachineCheckEntries::withVaneOverrideReason);

    /** Typed reason to go on out of level or off speed. */
    public static final Text<MachineCheckEntries> LEVEL_OVERRIDE_REASON = MACHINE_CHECK.text(
            "levelOverrideReason",
            "yard.levelReason",
            MachineCheckEntries::levelOverrideReason,
            MachineCheckEntries::withLevelOverrideReason);

    /** Which disc. */
    public static final Choice<VaneEntry, Side> VANE_DISC =
            VANES.row().choice("disc", "yard.disc", Side.class, VaneEntry::disc, VaneEntry::withDisc);

    /** For example "long" or "short". */
    public static final Text<VaneEntry> VANE_LABEL =
            VANES.row().text("label", "yard.vaneLabel", VaneEntry::label, VaneEntry::withLabel);

    /** Its length now, mm, cm or in. */
    public static final Quantity<VaneEntry> VANE_LENGTH = VANES.row()
            .quantity("length", "yard.lengthNow", Ranges.VANE_LENGTH, VaneEntry::length, VaneEntry::withLength);

    /** Its length when new. */
    public static final Quantity<VaneEntry> VANE_LENGTH_NEW = VANES.row()
            .quantity(
                    "lengthNew", "yard.lengthNew", Ranges.VANE_LENGTH, VaneEntry::lengthNew, VaneEntry::withLengthNew);

    /** Straight, smooth and without holes. */
    public static final Choice<VaneEntry, CheckAnswer> VANE_STRAIGHT_SMOOTH_UNHOLED = VANES.row()
            .choice(
                    "straightSmoothUnholed",
                    "yard.straight",
                    CheckAnswer.class,
                    VaneEntry::straightSmoothUnholed,
                    VaneEntry::withStraightSmoothUnholed);

    /** The outcome. */
    public static final Choice<CheckEntry, CheckAnswer> CHECK_ANSWER =
            CHECKS.row().choice("answer", "yard.parts", CheckAnswer.class, CheckEntry::answer, CheckEntry::withAnswer);

    /** Typed reason to go on all the same; printed on the card. */
    public static final Text<CheckEntry> CHECK_OVERRIDE_REASON = CHECKS.row()
            .text("overrideReason", "yard.reason", CheckEntry::overrideReason, CheckEntry::withOverrideReason);

    private MachineCheckPaths() {}
}
