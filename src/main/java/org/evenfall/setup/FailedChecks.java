package org.evenfall.setup;

import java.util.List;
import java.util.stream.Stream;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.VaneCheck;

/**
 * What of the machine check failed and is put right, or gone on with for a reason.
 *
 * @param parts failed parts of the walk round, with a reason or without
 * @param vane a vane failed
 * @param measured level, tyres or PTO speed is off
 */
public record FailedChecks(List<CheckItem> parts, boolean vane, boolean measured) {

    /** Copies the list. */
    public FailedChecks {
        parts = List.copyOf(parts);
    }

    /** What failed in an assessment. */
    public static FailedChecks of(Assessment assessment) {
        MachineCheckResult check = assessment.machineCheck();
        return new FailedChecks(
                Stream.concat(check.failed().stream(), check.overridden().stream())
                        .sorted()
                        .toList(),
                check.vanes().stream().anyMatch(VaneCheck::failed),
                assessment.findings().stream().anyMatch(MachineCheckFindings::isMeasureOff));
    }

    /** Whether anything failed. */
    public boolean any() {
        return !parts.isEmpty() || vane || measured;
    }
}
