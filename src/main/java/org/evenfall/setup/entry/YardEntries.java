package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.Typed;

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
public record YardEntries(
        List<VaneEntry> vanes,
        List<CheckEntry> checks,
        Typed heightLeft,
        Typed heightRight,
        Typed tilt,
        Typed tyreLeft,
        Typed tyreRight,
        Typed ptoMeasured,
        String ptoInstrument,
        String vaneOverrideReason,
        String levelOverrideReason)
        implements YardEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final YardEntries EMPTY = new YardEntries(
            List.of(),
            List.of(),
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            Typed.EMPTY,
            "",
            "",
            "");

    public YardEntries {
        vanes = Lists.of(vanes);
        checks = Lists.of(checks);
        heightLeft = Typed.orEmpty(heightLeft);
        heightRight = Typed.orEmpty(heightRight);
        tilt = Typed.orEmpty(tilt);
        tyreLeft = Typed.orEmpty(tyreLeft);
        tyreRight = Typed.orEmpty(tyreRight);
        ptoMeasured = Typed.orEmpty(ptoMeasured);
        ptoInstrument = Objects.requireNonNullElse(ptoInstrument, "");
        vaneOverrideReason = Objects.requireNonNullElse(vaneOverrideReason, "");
        levelOverrideReason = Objects.requireNonNullElse(levelOverrideReason, "");
    }
}
