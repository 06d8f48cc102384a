package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 3: the machine check.
 *
 * @param vanes vanes, one by one
 * @param checks parts, one by one
 * @param heightLeft height of the frame above the ground at the left, cm, m or in
 * @param heightRight height of the frame above the ground at the right, cm, m or in
 * @param tilt tilt measured, °; positive: rear higher
 * @param tyreLeft tyre pressure at the left, bar
 * @param tyreRight tyre pressure at the right, bar
 * @param ptoMeasured PTO speed measured, rpm
 * @param ptoInstrument instrument with which the PTO speed was measured, free text
 * @param engineSpeed engine speed that gives it, rpm
 * @param gear gear that gives it, free text
 * @param vaneOverrideReason reason to go on with a vane that failed, free text
 * @param levelOverrideReason reason to go on out of level or off the PTO speed, free text
 * @param unknownKeys keys of this object in the file that this version does not know
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
        EnteredQuantity engineSpeed,
        String gear,
        String vaneOverrideReason,
        String levelOverrideReason,
        UnknownKeys unknownKeys)
        implements MachineCheckEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final MachineCheckEntries EMPTY = Blank.of(MachineCheckEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public MachineCheckEntries {
        vanes = List.copyOf(vanes);
        checks = List.copyOf(checks);
    }
}
