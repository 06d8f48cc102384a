package org.evenfall.setup;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.path.LogPaths;
import org.jspecify.annotations.Nullable;

/**
 * Everything that follows from one setup, each step with its result.
 *
 * @param read every entry as read
 * @param states state of each step
 * @param machine the machine as read
 * @param tramlineWidthM tramline width
 * @param now what is set now, as the conditions of a test; null without a tramline width
 * @param product step 1
 * @param match step 2; null without a product
 * @param machineCheck step 3
 * @param height step 4; null until it can be read
 * @param rate step 5
 * @param trays step 6
 * @param card step 7
 * @param log what was spread, as logged
 * @param findings all findings, in the order of the steps, worst first within a step
 */
public record Assessment(
        ReadSetup read,
        Map<Step, StepState> states,
        MachineProfile machine,
        @Nullable Double tramlineWidthM,
        @Nullable TestConditions now,
        ProductResult product,
        @Nullable MatchResult match,
        MachineCheckResult machineCheck,
        @Nullable HeightResult height,
        RateResult rate,
        TraysResult trays,
        CardResult card,
        SeasonLogResult log,
        List<Finding> findings) {

    /** Copies the maps and lists. */
    public Assessment {
        findings = List.copyOf(findings);
        states = Collections.unmodifiableMap(new EnumMap<>(states));
    }

    /** The findings that have to do with the card: all but those about what was spread with it. */
    public List<Finding> findingsForCard() {
        return findings.stream()
                .filter(finding -> !LogPaths.holds(finding.field()))
                .toList();
    }

    /** The first step that is still open or stopped, else the card. */
    public Step nextStep() {
        return Stream.of(Step.values())
                .filter(step -> states.get(step) == StepState.OPEN || states.get(step) == StepState.STOPPED)
                .findFirst()
                .orElse(Step.CARD);
    }
}
