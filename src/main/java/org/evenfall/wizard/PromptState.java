package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.setup.StepState;

/** The state of a prompt, from the findings about what is typed in it. */
final class PromptState {

    private PromptState() {}

    /** @param begun something is typed or chosen, or there is nothing to type */
    static StepState of(List<Finding> own, boolean begun) {
        if (has(own, FindingKind.STOP)) {
            return StepState.STOPPED;
        }
        if (has(own, FindingKind.MISSING)) {
            return StepState.OPEN;
        }
        if (has(own, FindingKind.WARNING)) {
            return StepState.WARNED;
        }
        return begun ? StepState.DONE : StepState.OPEN;
    }

    private static boolean has(List<Finding> own, FindingKind kind) {
        return own.stream().anyMatch(finding -> finding.kind() == kind);
    }
}
