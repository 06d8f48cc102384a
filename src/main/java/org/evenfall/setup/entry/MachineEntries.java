package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;

/**
 * The machine, entered once and then chosen.
 *
 * @param name owner's name for the machine
 * @param workingWidths working widths in the handbook of the machine, m or ft
 * @param discDiameter diameter of the disc over the tips of the vanes, cm, mm, m or in
 * @param discSpeedAt540 disc speed at a PTO speed of 540 rpm, rpm
 * @param ptoLowest lowest PTO speed that the handbook allows, rpm
 * @param ptoHighest highest PTO speed that the handbook allows, rpm
 * @param outlets number of outlets, 2 on a twin-disc machine
 * @param wantedHeight height above the crop canopy that the handbook asks for, cm, m or in
 * @param referencePoint point from which the handbook measures that height, free text
 * @param levers levers of the machine
 * @param flowTableBasis outlets that the flows of the opening table count
 * @param flowTableDensity bulk density of the product of the opening table, kg/L or kg/m³
 * @param openings opening table of the handbook
 * @param handbook handbook and page, free text
 * @param rateSetting how the rate is set; unanswered counts as an opening by hand
 * @param factorRule how the terminal's handbook computes the next factor
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record MachineEntries(
        String name,
        List<EnteredQuantity> workingWidths,
        EnteredQuantity discDiameter,
        EnteredQuantity discSpeedAt540,
        EnteredQuantity ptoLowest,
        EnteredQuantity ptoHighest,
        EnteredQuantity outlets,
        EnteredQuantity wantedHeight,
        String referencePoint,
        List<LeverEntry> levers,
        FlowTableBasis flowTableBasis,
        EnteredQuantity flowTableDensity,
        List<OpeningEntry> openings,
        String handbook,
        RateSetting rateSetting,
        FactorRule factorRule,
        UnknownKeys unknownKeys)
        implements MachineEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MachineEntries EMPTY = Blank.of(MachineEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public MachineEntries {
        workingWidths = List.copyOf(workingWidths);
        levers = List.copyOf(levers);
        openings = List.copyOf(openings);
    }
}
