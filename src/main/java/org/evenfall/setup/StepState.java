package org.evenfall.setup;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Step;

/** The state of a step: each shown by shape, word and colour. */
public enum StepState {
    /** Something that the card needs is missing. */
    OPEN,
    /** Everything that the card needs is there. */
    DONE,
    /** Done, with something that goes on the card as a warning. */
    WARNED,
    /** Something stops the job until it is put right. */
    STOPPED;

    /** The state of each step. */
    static Map<Step, StepState> of(List<Finding> findings, CardResult card) {
        Map<Step, StepState> states = new EnumMap<>(Step.class);
        for (Step step : Step.values()) {
            Set<FindingKind> kinds = findings.stream()
                    .filter(finding -> finding.step() == step)
                    .map(Finding::kind)
                    .collect(Collectors.toSet());
            states.put(step, of(kinds, step == Step.CARD && !card.cardAllowed() && !card.findingOnly()));
        }
        return states;
    }

    private static StepState of(Set<FindingKind> kinds, boolean open) {
        if (kinds.contains(FindingKind.STOP)) {
            return STOPPED;
        }
        if (open || kinds.contains(FindingKind.MISSING)) {
            return OPEN;
        }
        return kinds.contains(FindingKind.WARNING) ? WARNED : DONE;
    }
}
