package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Step;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.AdviceKind;
import org.junit.jupiter.api.Test;

/** The assessment as a whole: findings in the order of the steps, worst first, each once; results passed on. */
class AssessorOrderTest {

    private static final TypedSetup UNEVEN = TypedSetup.uneven();

    /** A warning in the rate, a stop and a note in the trays, something missing for the card, a stop at the start. */
    private static final TypedSetup MIXED = UNEVEN.type(TrayPaths.WIND, "4 m/s")
            .type(RatePaths.HOPPER_USED, "1,8 t")
            .type(TrayPaths.TEST_POSITIONS, TrayPaths.TESTS.item(0), "-3", "4")
            .choose(CardPaths.SIGNED_BY, "")
            .type(MachinePaths.DISC_DIAMETER, "x");

    @Test
    void findingsAreInTheOrderOfTheSteps() {
        List<Step> steps = Assessor.assess(MIXED.setup()).findings().stream()
                .map(Finding::step)
                .toList();
        assertThat(steps).isSorted().contains(Step.START, Step.RATE, Step.TRAYS, Step.CARD);
    }

    @Test
    void theWorstOfAStepComesFirst() {
        List<Finding> findings = Assessor.assess(MIXED.setup()).findings();
        for (Step step : Step.values()) {
            List<Integer> weights = findings.stream()
                    .filter(finding -> finding.step() == step)
                    .map(finding -> finding.kind().weight())
                    .toList();
            assertThat(weights).as(step.name()).isSorted();
        }
        // in the trays a stop, found after notes of the same step
        assertThat(findings.stream()
                        .filter(finding -> finding.step() == Step.TRAYS)
                        .map(Finding::kind)
                        .distinct())
                .startsWith(FindingKind.STOP)
                .contains(FindingKind.NOTE);
    }

    /** Height without a bore: each of the eight catches asks for it, and so does each of the second test. */
    @Test
    void theSameFindingIsReportedOnce() {
        TypedSetup noBore = UNEVEN.type(TrayPaths.TUBE_BORE, "");
        assertThat(noBore.setup().trays().catchKind()).isEqualTo(AmountKind.HEIGHT);
        List<Finding> findings = Assessor.assess(noBore.setup()).findings();
        assertThat(findings)
                .filteredOn(one -> one.key().equals("trays.needsBore"))
                .hasSize(1);
        assertThat(findings).doesNotHaveDuplicates();
        // two findings of one key at two places are two
        List<Finding> twice = Assessor.assess(UNEVEN.type(CardPaths.WIND_STOP, "x")
                        .type(TrayPaths.WIND, "x")
                        .setup())
                .findings();
        assertThat(twice)
                .filteredOn(one -> one.key().equals("entry.notANumber"))
                .extracting(Finding::field)
                .containsExactly("/trays/wind", "/card/windStop");
    }

    @Test
    void findingsOfEveryStepAreTaken() {
        TypedSetup typed = UNEVEN.type(MachineCheckPaths.HEIGHT_LEFT, "")
                .type(RatePaths.TOLERANCE, "1 %")
                .choose(MatchPaths.CHOSEN, "");
        List<String> keys = new ArrayList<>();
        Assessor.assess(typed.setup()).findings().forEach(finding -> keys.add(finding.key()));
        // the last bucket test is 1.44 % too little
        assertThat(keys).contains("missing.level", "rate.tooLittle", "trays.evenGood", "trays.against");
    }

    /** 91.9 ft = 28.011 m; the stop of the machine check (6 cm out of level) stops the trays and orders the levelling. */
    @Test
    void oneStepKnowsTheOthers() {
        Assessment even = Assessor.assess(UNEVEN.setup());
        assertThat(even.tramlineWidthM()).isEqualTo(28.01112, within(1e-9));
        assertThat(even.states()).containsEntry(Step.CARD, StepState.DONE);
        // "urea-k" was chosen; 30 in over the crop
        assertThat(even.match().chosen().id()).isEqualTo("urea-k");
        assertThat(even.height().wantedOverCropM()).isEqualTo(0.762, within(1e-9));
        Assessment slanted = Assessor.assess(UNEVEN.type(MachineCheckPaths.HEIGHT_LEFT, "34 in")
                .type(
                        TrayPaths.TEST_CATCHES,
                        TrayPaths.TESTS.item(1),
                        "160 mm",
                        "150 mm",
                        "140 mm",
                        "130 mm",
                        "120 mm",
                        "110 mm",
                        "100 mm",
                        "90 mm",
                        "80 mm")
                .setup());
        assertThat(slanted.findings()).anyMatch(finding -> finding.key().equals("trays.yardFirst"));
        assertThat(slanted.trays().advice().kind()).isEqualTo(AdviceKind.LEVEL_HEIGHT_TYRES);
        assertThat(slanted.card().cardAllowed()).isFalse();
        assertThat(slanted.states())
                .containsEntry(Step.TRAYS, StepState.STOPPED)
                .containsEntry(Step.CARD, StepState.OPEN);
    }
}
