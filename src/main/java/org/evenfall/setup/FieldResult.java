package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.jspecify.annotations.Nullable;

/**
 * What follows from a setup up to the tray tests, without match and card.
 *
 * @param read every entry as read
 * @param machine the machine as read
 * @param tramlineWidthM tramline width
 * @param product step 1
 * @param start settings to start from
 * @param machineCheck step 3
 * @param height step 4; null until it can be read
 * @param rate step 5
 * @param now what is set now; null without a tramline width
 * @param trays step 6
 */
public record FieldResult(
        ReadSetup read,
        MachineProfile machine,
        @Nullable Double tramlineWidthM,
        ProductResult product,
        ReadSettings start,
        MachineCheckResult machineCheck,
        @Nullable HeightResult height,
        RateResult rate,
        @Nullable MachineSet now,
        TraysResult trays) {

    /** What is typed but could not be read, so that the advice does without it. */
    public List<Finding> unreadable() {
        return read.findings().stream()
                .filter(finding -> finding.kind() == FindingKind.STOP)
                .toList();
    }
}
