package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.setup.entry.Setup;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.LeverMove;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where each instruction after a tray test is carried out. */
class NextActionTest {

    private static final Assessment EMPTY = Assessor.assess(Setup.EMPTY);

    private static NextAction after(Advice advice, Finding... more) {
        TraysResult trays = EMPTY.trays();
        List<Finding> findings = new ArrayList<>(Arrays.asList(more));
        return NextAction.after(new Assessment(
                EMPTY.read(),
                EMPTY.states(),
                EMPTY.machine(),
                EMPTY.tramlineWidthM(),
                EMPTY.now(),
                EMPTY.product(),
                EMPTY.match(),
                EMPTY.machineCheck(),
                EMPTY.height(),
                EMPTY.rate(),
                new TraysResult(
                        trays.layout(),
                        trays.plan(),
                        trays.strip(),
                        trays.placesM(),
                        trays.tests(),
                        trays.comparisons(),
                        trays.loss(),
                        advice,
                        trays.line(),
                        trays.windLimits()),
                EMPTY.card(),
                EMPTY.log(),
                findings));
    }

    private static AdviceReason reason(AdviceReason.Kind kind, String subject) {
        return AdviceReason.about(kind, subject, new double[kind.count()]);
    }

    @Test
    void withoutAnAdviceTheFirstTestIsDriven() {
        assertThat(NextAction.after(EMPTY)).isEqualTo(NextAction.FIRST_TEST);
    }

    @ParameterizedTest
    @CsvSource({
        "DO_A_TEST, DO_A_TEST, '', FIRST_TEST",
        "WAIT_FOR_WIND, WINDY, '', CALMER_TEST",
        "OUTLETS_AND_VANES, GUARDS_UNSEEN, '', PARTS",
        "OUTLETS_AND_VANES, PART_FAILED, GUARDS, PARTS",
        "OUTLETS_AND_VANES, PART_FAILED, AGITATOR, PARTS",
        "LEVEL_HEIGHT_TYRES, PART_FAILED, TYRES, TYRES",
        "LEVEL_HEIGHT_TYRES, PART_FAILED, LEVEL, LEVEL",
        "OUTLETS_AND_VANES, VANE_WORN, long, VANES",
        "OUTLETS_AND_VANES, VANE_FAILED, long, VANES",
        "OUTLETS_AND_VANES, VANES_UNSEEN, '', VANES",
        "LEVEL_HEIGHT_TYRES, LEVEL_OFF, '', LEVEL",
        "LEVEL_HEIGHT_TYRES, TYRES_OFF, '', TYRES",
        "PTO_SPEED, PTO_OFF, '', PTO_SPEED",
        "PTO_SPEED, PTO_BEYOND, '', PTO_SPEED",
        "PTO_SPEED, PTO_UNSEEN, '', PTO_SPEED",
        "OUTLETS_AND_VANES, OUTLETS_UNEQUAL, '', OUTLETS",
        "OUTLETS_AND_VANES, OUTLETS_UNSEEN, '', OUTLETS",
        "OUTLETS_AND_VANES, PRODUCT_DAMP, '', PRODUCT",
        "OUTLETS_AND_VANES, PRODUCT_CAKED, '', PRODUCT",
        "REPEAT_TEST, SPOILT_TRAY, '', TYPE_AGAIN",
        "CONFIRM_DIRECTION, DIRECTION, vane, DIRECTION",
        "LEVEL_HEIGHT_TYRES, ONE_SIDE, '', LEVEL",
        "PTO_SPEED, ONE_SIDE, '', PTO_SPEED",
        "OUTLETS_AND_VANES, ONE_SIDE, '', OUTLETS",
        "CANNOT_TELL_BETTER, NO_SHAPE, '', SAME_TEST",
        "CANNOT_TELL_BETTER, NO_BETTER, '', SAME_TEST",
        "NO_LEVER_LEFT, END_STOP, '', GO_ON",
        "NO_LEVER_LEFT, NO_LEVER, '', GO_ON"
    })
    void theReasonDecides(AdviceKind kind, AdviceReason.Kind reason, String subject, NextAction action) {
        assertThat(after(new Advice(kind, List.of(reason(reason, subject))))).isEqualTo(action);
    }

    @Test
    void allInOrderAndStillOneSidedMeansTheVanes() {
        Advice vanes = new Advice(
                AdviceKind.OUTLETS_AND_VANES,
                List.of(reason(AdviceReason.Kind.ONE_SIDE, ""), reason(AdviceReason.Kind.VANES_AGAIN, "")));
        assertThat(after(vanes)).isEqualTo(NextAction.VANES);
    }

    @Test
    void noiseMeansMoreRunsIntoTheSameTrays() {
        Advice noise = new Advice(
                AdviceKind.REPEAT_TEST,
                List.of(),
                null,
                null,
                List.of(reason(AdviceReason.Kind.NOISE, "")),
                false,
                false,
                2,
                List.of(),
                "");
        assertThat(after(noise)).isEqualTo(NextAction.MORE_RUNS);
        assertThat(NextAction.MORE_RUNS.newTest()).isFalse();
    }

    /** A plus sign that waits for a number comes before any advice; one elsewhere does not matter here. */
    @Test
    void furtherRunsAreTypedFirst() {
        Advice keep = new Advice(AdviceKind.KEEP, List.of(reason(AdviceReason.Kind.KEEP, "")));
        assertThat(after(keep, Finding.missing(Step.TRAYS, "entry.sumOpen"))).isEqualTo(NextAction.TYPE_AGAIN);
        assertThat(after(keep, Finding.missing(Step.RATE, "entry.sumOpen"))).isEqualTo(NextAction.GO_ON);
    }

    @Test
    void aMoveMeansATestWithIt() {
        Advice move = new Advice(
                AdviceKind.MOVE_LEVER,
                List.of(new LeverMove("vane", "", 8, 7, 1, false)),
                null,
                null,
                List.of(reason(AdviceReason.Kind.CENTRE_HEAVY, "")),
                false,
                false,
                null,
                List.of(),
                "");
        assertThat(after(move)).isEqualTo(NextAction.TEST_WITH_MOVE);
        assertThat(NextAction.TEST_WITH_MOVE.newTest()).isTrue();
    }

    /** Kept settings: the bucket once more where levers or PTO speed are others than when it was caught. */
    @Test
    void keptSettingsMayNeedTheBucketAgain() {
        Advice keep = new Advice(AdviceKind.KEEP, List.of(reason(AdviceReason.Kind.KEEP, "")));
        assertThat(after(keep)).isEqualTo(NextAction.GO_ON);
        Finding other = Finding.warn(Step.RATE, "rate.speedOff", Arg.count(1));
        assertThat(after(keep, other)).isEqualTo(NextAction.GO_ON);
        Finding differs = Finding.warn(Step.RATE, "rate.differs." + ConditionKind.LEVERS, Arg.count(1));
        assertThat(after(keep, differs)).isEqualTo(NextAction.BUCKET_AGAIN);
    }
}
