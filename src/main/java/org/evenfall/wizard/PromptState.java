package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.setup.StepState;

/** The state of a prompt, from the findings about what is typed in it. */
final class PromptState {

    private PromptState() {}

    static StepState of(List<Finding> own) {
        if (has(own, FindingKind.STOP)) {
            return StepState.STOPPED;
        }
        if (has(own, FindingKind.MISSING)) {
            return StepState.OPEN;
        }
        return has(own, FindingKind.WARNING) ? StepState.WARNED : StepState.DONE;
    }

    private static boolean has(List<Finding> own, FindingKind kind) {
        return own.stream().anyMatch(finding -> finding.kind() == kind);
    }
}
