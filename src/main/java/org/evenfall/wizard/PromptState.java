package org.evenfall.wizard;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.setup.StepState;

/** The state of a prompt, from the findings about what is typed in it. */
enum PromptState {
    /** Nothing is missing here. */
    DONE,
    /** Something is still to be typed or chosen. */
    OPEN,
    /** Complete, with a warning. */
    WARNED,
    /** Something cannot be so, or stops the job. */
    STOPPED,
    /** The person goes on without it. */
    SKIPPED;

    /**
     * The state of one prompt.
     *
     * @param own findings about what is typed in it
     * @param begun something is typed or chosen, or there is nothing to type
     * @param skipped the person goes on without it
     */
    static PromptState of(List<Finding> own, boolean begun, boolean skipped) {
        if (has(own, FindingKind.STOP)) {
            return STOPPED;
        }
        if (skipped) {
            return SKIPPED;
        }
        if (has(own, FindingKind.MISSING)) {
            return OPEN;
        }
        if (has(own, FindingKind.WARNING)) {
            return WARNED;
        }
        return begun ? DONE : OPEN;
    }

    /** The state of a step, as the same word and shape. */
    static PromptState of(StepState step) {
        return switch (step) {
            case OPEN -> OPEN;
            case DONE -> DONE;
            case WARNED -> WARNED;
            case STOPPED -> STOPPED;
        };
    }

    private static boolean has(List<Finding> own, FindingKind kind) {
        return own.stream().anyMatch(finding -> finding.kind() == kind);
    }
}
