package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The worst finding of a step sets its state; the card is open until one may be made. */
class StepStateTest {

    private static final FinalSettings SETTINGS = new FinalSettings(Map.of(), null, null, null, null, null, null);

    private static Map<Step, StepState> states(boolean cardAllowed, boolean findingOnly, Finding... findings) {
        return StepState.of(List.of(findings), new CardResult(cardAllowed, findingOnly, List.of(), SETTINGS, null, ""));
    }

    @ParameterizedTest
    @CsvSource({
        "'', DONE",
        "NOTE, DONE",
        "WARNING, WARNED",
        "MISSING, OPEN",
        "STOP, STOPPED",
        "NOTE WARNING, WARNED",
        "WARNING MISSING, OPEN",
        "MISSING WARNING NOTE, OPEN",
        "MISSING STOP WARNING, STOPPED",
        "STOP NOTE, STOPPED"
    })
    void theWorstCounts(String severities, StepState state) {
        Finding[] findings = Arrays.stream(severities.split(" "))
                .filter(word -> !word.isEmpty())
                .map(word -> new Finding(FindingKind.valueOf(word), Step.RATE, "key", List.of(), "", ""))
                .toArray(Finding[]::new);
        Map<Step, StepState> states = states(true, false, findings);
        assertThat(states).hasSize(Step.values().length).containsEntry(Step.RATE, state);
        states.forEach((step, other) -> {
            if (step != Step.RATE) {
                assertThat(other).as(step.name()).isEqualTo(StepState.DONE);
            }
        });
    }

    @ParameterizedTest
    @CsvSource({"true, false, DONE", "false, true, DONE", "false, false, OPEN"})
    void theCardIsOpenUntilACardOrAFindingMayBeMade(boolean cardAllowed, boolean findingOnly, StepState state) {
        Map<Step, StepState> states = states(cardAllowed, findingOnly);
        assertThat(states).containsEntry(Step.CARD, state).containsEntry(Step.TRAYS, StepState.DONE);
    }

    @Test
    void theCardMayBeStopped() {
        assertThat(states(false, false, Finding.stop(Step.CARD, "key"))).containsEntry(Step.CARD, StepState.STOPPED);
        assertThat(states(false, true, Finding.warn(Step.CARD, "key"))).containsEntry(Step.CARD, StepState.WARNED);
    }
}
