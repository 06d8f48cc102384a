package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;

/**
 * The machine, entered once and then chosen.
 *
 * @param name the owner's name for it
 * @param workingWidths working widths its handbook names, m or ft
 * @param discRadius centre of the disc to the tip of the vane, cm, mm, m or in
 * @param discSpeedAt540 disc speed at 540 rpm of the shaft, rpm
 * @param ptoLowest lowest shaft speed its handbook allows, rpm
 * @param ptoHighest highest, rpm
 * @param outlets number of outlets (2 on a twin-disc machine)
 * @param wantedHeight height over the crop its handbook asks for, cm, m or in
 * @param referencePoint where the handbook measures that height from
 * @param levers the levers
 * @param flowTableBasis what the flows in the table count
 * @param flowTableDensity bulk density of the product the table is for, kg/L
 * @param openings opening table
 * @param handbook which handbook and page, free text
 */
@RecordBuilder
public record MachineEntries(
        String name,
        List<EnteredQuantity> workingWidths,
        EnteredQuantity discRadius,
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
        String handbook)
        implements MachineEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MachineEntries EMPTY = new MachineEntries(
            "",
            List.of(),
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            "",
            List.of(),
            FlowTableBasis.UNANSWERED,
            EnteredQuantity.EMPTY,
            List.of(),
            "");

    public MachineEntries {
        name = Objects.requireNonNullElse(name, "");
        workingWidths = Lists.typed(workingWidths);
        discRadius = EnteredQuantity.orEmpty(discRadius);
        discSpeedAt540 = EnteredQuantity.orEmpty(discSpeedAt540);
        ptoLowest = EnteredQuantity.orEmpty(ptoLowest);
        ptoHighest = EnteredQuantity.orEmpty(ptoHighest);
        outlets = EnteredQuantity.orEmpty(outlets);
        wantedHeight = EnteredQuantity.orEmpty(wantedHeight);
        referencePoint = Objects.requireNonNullElse(referencePoint, "");
        levers = Lists.of(levers);
        flowTableBasis = Objects.requireNonNullElse(flowTableBasis, FlowTableBasis.UNANSWERED);
        flowTableDensity = EnteredQuantity.orEmpty(flowTableDensity);
        openings = Lists.of(openings);
        handbook = Objects.requireNonNullElse(handbook, "");
    }
}
