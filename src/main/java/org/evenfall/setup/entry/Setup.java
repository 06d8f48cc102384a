package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * One product on one machine for one season: everything that was typed and nothing that can be computed.
 *
 * @param start step 0: farm, field and crop
 * @param machine the machine
 * @param product step 1: the product in the bag
 * @param match step 2: the tested product to compare with
 * @param machineCheck step 3: the machine check
 * @param height step 4: height above the crop canopy
 * @param rate step 5: plan and check of the rate
 * @param trays step 6: the tray test
 * @param card step 7: the card
 * @param log what was spread with these settings
 * @param guide what the guide keeps of the person's way through it
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record Setup(
        StartEntries start,
        MachineEntries machine,
        ProductEntries product,
        MatchEntries match,
        MachineCheckEntries machineCheck,
        HeightEntries height,
        RateEntries rate,
        TrayEntries trays,
        CardEntries card,
        LogEntries log,
        GuideEntries guide,
        UnknownKeys unknownKeys)
        implements SetupBuilder.With {

    /** Nothing typed yet. */
    public static final Setup EMPTY = Blank.of(Setup.class);
}
