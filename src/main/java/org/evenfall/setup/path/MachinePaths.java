package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.machine.Widening;
import org.evenfall.setup.entry.FlowTableBasis;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.OpeningEntry;
import org.evenfall.setup.entry.Setup;

/** The machine: entries of step 0. */
public final class MachinePaths {

    /** The record of this step. */
    public static final Part<MachineEntries> MACHINE =
            Part.top("machine", Step.START, Setup::machine, Setup::withMachine);

    /** The owner's name for it. */
    public static final Text<MachineEntries> NAME = MACHINE.text(
                    "name", "start.machineName", MachineEntries::name, MachineEntries::withName)
            .asked("missing.machine");

    /** Working widths its handbook names, m or ft. */
    public static final QuantityList<MachineEntries> WORKING_WIDTHS = MACHINE.quantities(
            "workingWidths",
            "field.workingWidth",
            Ranges.WORKING_WIDTH,
            MachineEntries::workingWidths,
            MachineEntries::withWorkingWidths);

    /** Diameter of the disc over the tips of the vanes, cm, mm, m or in. */
    public static final Quantity<MachineEntries> DISC_DIAMETER = MACHINE.quantity(
            "discDiameter", Ranges.DISC_DIAMETER, MachineEntries::discDiameter, MachineEntries::withDiscDiameter);

    /** Disc speed at a PTO speed of 540 rpm, rpm. */
    public static final Quantity<MachineEntries> DISC_SPEED_AT540 = MACHINE.quantity(
            "discSpeedAt540", Ranges.DISC_SPEED, MachineEntries::discSpeedAt540, MachineEntries::withDiscSpeedAt540);

    /** Lowest PTO speed its handbook allows, rpm. */
    public static final Quantity<MachineEntries> PTO_LOWEST = MACHINE.quantity(
            "ptoLowest", "start.ptoLowest", Ranges.PTO_LIMIT, MachineEntries::ptoLowest, MachineEntries::withPtoLowest);

    /** Highest, rpm. */
    public static final Quantity<MachineEntries> PTO_HIGHEST = MACHINE.quantity(
            "ptoHighest",
            "start.ptoHighest",
            Ranges.PTO_LIMIT,
            MachineEntries::ptoHighest,
            MachineEntries::withPtoHighest);

    /** Number of outlets (2 on a twin-disc machine). */
    public static final Quantity<MachineEntries> OUTLETS =
            MACHINE.quantity("outlets", Ranges.OUTLETS, MachineEntries::outlets, MachineEntries::withOutlets);

    /** Height over the crop its handbook asks for, cm, m or in. */
    public static final Quantity<MachineEntries> WANTED_HEIGHT = MACHINE.quantity(
            "wantedHeight",
            "start.handbookHeight",
            Ranges.HEIGHT_OVER_CROP,
            MachineEntries::wantedHeight,
            MachineEntries::withWantedHeight);

    /** Where the handbook measures that height from. */
    public static final Text<MachineEntries> REFERENCE_POINT = MACHINE.text(
            "referencePoint", "height.reference", MachineEntries::referencePoint, MachineEntries::withReferencePoint);

    /** The levers. */
    public static final Rows<MachineEntries, LeverEntry> LEVERS = MACHINE.rows(
            "levers", "start.levers", LeverEntry.EMPTY, MachineEntries::levers, MachineEntries::withLevers);

    /** What the flows in the table count. */
    public static final Choice<MachineEntries, FlowTableBasis> FLOW_TABLE_BASIS = MACHINE.choice(
            "flowTableBasis",
            "start.flowsCount",
            FlowTableBasis.class,
            MachineEntries::flowTableBasis,
            MachineEntries::withFlowTableBasis);

    /** Bulk density of the product the table is for, kg/L. */
    public static final Quantity<MachineEntries> FLOW_TABLE_DENSITY = MACHINE.quantity(
            "flowTableDensity",
            "start.tableDensity",
            Ranges.BULK_DENSITY,
            MachineEntries::flowTableDensity,
            MachineEntries::withFlowTableDensity);

    /** Opening table. */
    public static final Rows<MachineEntries, OpeningEntry> OPENINGS = MACHINE.rows(
            "openings", "start.openings", OpeningEntry.EMPTY, MachineEntries::openings, MachineEntries::withOpenings);

    /** Which handbook and page, free text. */
    public static final Text<MachineEntries> HANDBOOK =
            MACHINE.text("handbook", "start.handbook", MachineEntries::handbook, MachineEntries::withHandbook);

    /** How the rate is set; unanswered counts as an opening by hand. */
    public static final Choice<MachineEntries, RateSetting> RATE_SETTING = MACHINE.choice(
            "rateSetting",
            "start.rateSetting",
            RateSetting.class,
            MachineEntries::rateSetting,
            MachineEntries::withRateSetting);

    /** How the terminal's handbook computes the next factor. */
    public static final Choice<MachineEntries, FactorRule> FACTOR_RULE = MACHINE.choice(
                    "factorRule",
                    "start.factorRule",
                    FactorRule.class,
                    MachineEntries::factorRule,
                    MachineEntries::withFactorRule)
            .neededByAssessment();

    /** The owner's own label, for example "long vane". */
    public static final Text<LeverEntry> LEVER_LABEL =
            LEVERS.row().text("label", "start.label", LeverEntry::label, LeverEntry::withLabel);

    /** The unit or scale on the lever, free text, may be empty. */
    public static final Text<LeverEntry> LEVER_UNIT =
            LEVERS.row().text("unit", "form.unit", LeverEntry::unit, LeverEntry::withUnit);

    /** Lowest number on the scale. */
    public static final Quantity<LeverEntry> LEVER_LOWEST = LEVERS.row()
            .quantity("lowest", "start.lowest", Ranges.LEVER_VALUE, LeverEntry::lowest, LeverEntry::withLowest);

    /** Highest number on the scale. */
    public static final Quantity<LeverEntry> LEVER_HIGHEST = LEVERS.row()
            .quantity("highest", "start.highest", Ranges.LEVER_VALUE, LeverEntry::highest, LeverEntry::withHighest);

    /** Smallest step that can be set. */
    public static final Quantity<LeverEntry> LEVER_STEP =
            LEVERS.row().quantity("step", "start.step", Ranges.LEVER_STEP, LeverEntry::step, LeverEntry::withStep);

    /** Which way throws wider. */
    public static final Choice<LeverEntry, Widening> LEVER_WIDER_WHEN = LEVERS.row()
            .choice("widerWhen", "start.wider", Widening.class, LeverEntry::widerWhen, LeverEntry::withWiderWhen);

    /** Number on the opening scale. */
    public static final Quantity<OpeningEntry> OPENING_OPENING =
            OPENINGS.row().quantity("opening", Ranges.OPENING, OpeningEntry::opening, OpeningEntry::withOpening);

    /** Flow at it, kg/min or lb/min. */
    public static final Quantity<OpeningEntry> OPENING_FLOW =
            OPENINGS.row().quantity("flow", Ranges.FLOW, OpeningEntry::flow, OpeningEntry::withFlow);

    private MachinePaths() {}
}
