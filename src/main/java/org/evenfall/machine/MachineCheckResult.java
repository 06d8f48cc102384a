package org.evenfall.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of the machine check.
 *
 * @param vanes vanes
 * @param failed items that failed and are not overridden
 * @param overridden items that failed and are overridden with a reason
 * @param unanswered items not yet checked
 * @param levelDifferenceM left height less right height of the frame, m
 * @param tyreDifferenceBar left less right tyre pressure, bar
 * @param ptoRpm measured PTO speed, rpm
 * @param discRpm disc speed at it, rpm
 * @param blocksFieldTest a failed item stops the tray test
 */
public record MachineCheckResult(
        List<VaneCheck> vanes,
        List<CheckItem> failed,
        List<CheckItem> overridden,
        List<CheckItem> unanswered,
        @Nullable Double levelDifferenceM,
        @Nullable Double tyreDifferenceBar,
        @Nullable Double ptoRpm,
        @Nullable Double discRpm,
        boolean blocksFieldTest) {

    /** Copies the lists. */
    public MachineCheckResult {
        vanes = List.copyOf(vanes);
        failed = List.copyOf(failed);
        overridden = List.copyOf(overridden);
        unanswered = List.copyOf(unanswered);
    }
}
