package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.Typed;

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
        List<Typed> workingWidths,
        Typed discRadius,
        Typed discSpeedAt540,
        Typed ptoLowest,
        Typed ptoHighest,
        Typed outlets,
        Typed wantedHeight,
        String referencePoint,
        List<LeverEntry> levers,
        FlowTableBasis flowTableBasis,
        Typed flowTableDensity,
        List<OpeningEntry> openings,
        String handbook)
        implements MachineEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MachineEntries EMPTY = new MachineEntries(
            "",
            List.of(),
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            "",
            List.of(),
            FlowTableBasis.UNANSWERED,
            Typed.EMPTY,
            List.of(),
            "");

    public MachineEntries {
        name = Objects.requireNonNullElse(name, "");
        workingWidths = Lists.typed(workingWidths);
        discRadius = Typed.orEmpty(discRadius);
        discSpeedAt540 = Typed.orEmpty(discSpeedAt540);
        ptoLowest = Typed.orEmpty(ptoLowest);
        ptoHighest = Typed.orEmpty(ptoHighest);
        outlets = Typed.orEmpty(outlets);
        wantedHeight = Typed.orEmpty(wantedHeight);
        referencePoint = Objects.requireNonNullElse(referencePoint, "");
        levers = Lists.of(levers);
        flowTableBasis = Objects.requireNonNullElse(flowTableBasis, FlowTableBasis.UNANSWERED);
        flowTableDensity = Typed.orEmpty(flowTableDensity);
        openings = Lists.of(openings);
        handbook = Objects.requireNonNullElse(handbook, "");
    }
}
