package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 3: the machine looked over in the yard.
 *
 * @param vanes each vane
 * @param checks each part
 * @param heightLeft height of the frame at the left, cm, m or in
 * @param heightRight at the right
 * @param tilt tilt measured, °
 * @param tyreLeft tyre pressure left, bar
 * @param tyreRight tyre pressure right, bar
 * @param ptoMeasured shaft speed measured, rpm
 * @param ptoInstrument measured with what
 * @param vaneOverrideReason typed reason to go on with a vane that failed
 * @param levelOverrideReason typed reason to go on out of level or off speed
 */
@RecordBuilder
public record MachineCheckEntries(
        List<VaneEntry> vanes,
        List<CheckEntry> checks,
        EnteredQuantity heightLeft,
        EnteredQuantity heightRight,
        EnteredQuantity tilt,
        EnteredQuantity tyreLeft,
        EnteredQuantity tyreRight,
        EnteredQuantity ptoMeasured,
        String ptoInstrument,
        String vaneOverrideReason,
        String levelOverrideReason)
        implements MachineCheckEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MachineCheckEntries EMPTY = new MachineCheckEntries(
            List.of(),
            List.of(),
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            "",
            "",
            "");

    public MachineCheckEntries {
        vanes = Lists.of(vanes);
        checks = Lists.of(checks);
        heightLeft = EnteredQuantity.orEmpty(heightLeft);
        heightRight = EnteredQuantity.orEmpty(heightRight);
        tilt = EnteredQuantity.orEmpty(tilt);
        tyreLeft = EnteredQuantity.orEmpty(tyreLeft);
        tyreRight = EnteredQuantity.orEmpty(tyreRight);
        ptoMeasured = EnteredQuantity.orEmpty(ptoMeasured);
        ptoInstrument = Objects.requireNonNullElse(ptoInstrument, "");
        vaneOverrideReason = Objects.requireNonNullElse(vaneOverrideReason, "");
        levelOverrideReason = Objects.requireNonNullElse(levelOverrideReason, "");
    }
}
