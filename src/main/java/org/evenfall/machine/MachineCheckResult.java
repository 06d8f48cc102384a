package org.evenfall.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The machine as found in the yard.
 *
 * @param vanes vanes
 * @param failed parts that failed and are not overridden
 * @param overridden parts that failed and are overridden with a reason
 * @param unanswered parts not yet looked at
 * @param levelDifferenceM left height less right height of the frame, m
 * @param tyreDifferenceBar left less right tyre pressure, bar
 * @param ptoRpm measured shaft speed
 * @param discRpm disc speed that follows
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

    public MachineCheckResult {
        vanes = List.copyOf(vanes);
        failed = List.copyOf(failed);
        overridden = List.copyOf(overridden);
        unanswered = List.copyOf(unanswered);
    }
}
