package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;

/**
 * One product on one machine for one season: everything the person typed and nothing that can be computed.
 *
 * @param start step 0
 * @param machine the machine
 * @param product step 1
 * @param match step 2
 * @param machineCheck step 3
 * @param height step 4
 * @param rate step 5
 * @param trays step 6
 * @param card step 7
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
        CardEntries card)
        implements SetupBuilder.With {

    /** Nothing typed yet. */
    public static final Setup EMPTY = new Setup(
            StartEntries.EMPTY,
            MachineEntries.EMPTY,
            ProductEntries.EMPTY,
            MatchEntries.EMPTY,
            MachineCheckEntries.EMPTY,
            HeightEntries.EMPTY,
            RateEntries.EMPTY,
            TrayEntries.EMPTY,
            CardEntries.EMPTY);

    public Setup {
        start = Objects.requireNonNullElse(start, StartEntries.EMPTY);
        machine = Objects.requireNonNullElse(machine, MachineEntries.EMPTY);
        product = Objects.requireNonNullElse(product, ProductEntries.EMPTY);
        match = Objects.requireNonNullElse(match, MatchEntries.EMPTY);
        machineCheck = Objects.requireNonNullElse(machineCheck, MachineCheckEntries.EMPTY);
        height = Objects.requireNonNullElse(height, HeightEntries.EMPTY);
        rate = Objects.requireNonNullElse(rate, RateEntries.EMPTY);
        trays = Objects.requireNonNullElse(trays, TrayEntries.EMPTY);
        card = Objects.requireNonNullElse(card, CardEntries.EMPTY);
    }
}
