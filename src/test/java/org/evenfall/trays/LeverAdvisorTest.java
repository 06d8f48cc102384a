package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.evenfall.trays.TestFields.CENTRE_HEAVY;
import static org.evenfall.trays.TestFields.IN_ORDER;
import static org.evenfall.trays.TestFields.LEVER;
import static org.evenfall.trays.TestFields.advise;
import static org.evenfall.trays.TestFields.at;
import static org.evenfall.trays.TestFields.kinds;
import static org.evenfall.trays.TestFields.lever;
import static org.evenfall.trays.TestFields.stated;
import static org.evenfall.trays.TestFields.test;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeverAdvisorTest {

    @Test
    void centreHeavyGoesWiderTheOwnersWay() {
        for (Widening widening : List.of(Widening.HIGHER, Widening.LOWER)) {
            Advice advice = advise(List.of(lever(widening)), IN_ORDER, test(10, CENTRE_HEAVY));
            assertThat(advice.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
            LeverMove move = advice.moves().get(0);
            assertThat(move.wider()).isTrue();
            assertThat(move.from()).isEqualTo(10);
            assertThat(Math.signum(move.to() - move.from())).isEqualTo(widening == Widening.HIGHER ? 1 : -1);
            assertThat(move.to() - move.from()).isEqualTo(move.steps());
            assertThat(Math.abs(move.steps())).isEqualTo(4);
            assertThat(advice.expected().percent()).isLessThan(20);
            assertThat(kinds(advice))
                    .containsExactly(
                            AdviceReason.Kind.CENTRE_HEAVY, AdviceReason.Kind.ONE_LEVER, AdviceReason.Kind.THEN_AGAIN);
        }
    }

    @Test
    void overlapHeavyGoesNarrower() {
        Advice advice = advise(test(10, 13, 11.5, 9.5, 8, 9.5, 11.5, 13));
        assertThat(advice.moves().get(0).wider()).isFalse();
        assertThat(advice.moves().get(0).steps()).isNegative();
    }

    /** "Do not spread" is a reason only where the CV is above the last limit. */
    @ParameterizedTest
    @CsvSource({"20, false", "20.01, true"})
    void doNotSpreadIsNamedAboveTheLastLimit(double cvPercent, boolean notYet) {
        Advice advice = advise(at(10, stated(cvPercent, 2, 0, 18, 0)));
        assertThat(kinds(advice).contains(AdviceReason.Kind.NOT_YET)).isEqualTo(notYet);
    }

    @Test
    void quarterPointsAreNamedWhereCentreIsNotSignificant() {
        assertThat(kinds(advise(at(10, stated(18, 2, 0, 1, 9))))).startsWith(AdviceReason.Kind.QUARTERS_LIGHT);
        assertThat(kinds(advise(at(10, stated(18, 2, 0, 1, -9))))).startsWith(AdviceReason.Kind.QUARTERS_HEAVY);
        assertThat(advise(at(10, stated(18, 2, 0, 1, -9))).reasons().get(0).numbers())
                .containsExactly(9.0);
    }

    @Test
    void aSecondTestTeachesTheResponse() {
        // two steps took the amplitude from about 28 to about 14 %
        AdviceInput.DoneTest last = test(12, 8.6, 9.5, 11, 11.9, 11, 9.5, 8.3);
        Advice alone = advise(last);
        Advice both = advise(test(10, CENTRE_HEAVY), last);
        assertThat(both.expected().intervalPercent().width())
                .isLessThan(alone.expected().intervalPercent().width());
    }

    /** The way back is offered at once, past the setting before, and the direction is doubted. */
    @Test
    void aLeverThatWorksTheOtherWayIsTakenBack() {
        Advice advice = advise(test(10, 8.6, 9.5, 11, 11.9, 11, 9.5, 8.3), test(13, 5.5, 8, 12.5, 16, 12.5, 8, 5.5));
        assertThat(advice.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        assertThat(advice.back()).isTrue();
        assertThat(advice.moves().get(0).to()).isLessThan(10);
        assertThat(advice.reasons())
                .anyMatch(reason -> reason.kind() == AdviceReason.Kind.DIRECTION
                        && reason.lever().equals(LEVER));
    }

    /** Where there is no way back, the direction is asked. */
    @Test
    void aLeverThatCannotBeTakenBackIsAskedAbout() {
        Advice advice = advise(
                List.of(new Lever(LEVER, "", 13, 20, 1, Widening.HIGHER)),
                IN_ORDER,
                test(10, 8.6, 9.5, 11, 11.9, 11, 9.5, 8.3),
                test(13, 5.5, 8, 12.5, 16, 12.5, 8, 5.5));
        assertThat(advice.kind()).isEqualTo(AdviceKind.CONFIRM_DIRECTION);
        assertThat(advice.reasons().get(advice.reasons().size() - 1).lever()).isEqualTo(LEVER);
        assertThat(advice.lever()).isEqualTo(LEVER);
    }

    /** Nobody knows the direction: the first move is a probe, and the next goes the way that it showed. */
    @Test
    void anUnknownDirectionIsProbed() {
        List<Lever> unknown = List.of(lever(Widening.UNKNOWN));
        Advice probe = advise(unknown, IN_ORDER, test(10, CENTRE_HEAVY));
        assertThat(probe.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        assertThat(probe.probe()).isTrue();
        assertThat(probe.moves().get(0).steps()).isEqualTo(2);
        assertThat(kinds(probe)).contains(AdviceReason.Kind.PROBE);
        Advice back = advise(unknown, IN_ORDER, test(10, CENTRE_HEAVY), test(12, 4.5, 7, 13.5, 18, 13.5, 7, 4.5));
        assertThat(back.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        assertThat(back.probe()).isFalse();
        assertThat(back.back()).isTrue();
        assertThat(back.moves().get(0).to()).isLessThan(10);
    }

    /** Contradicted below a probability of 0.05 that the owner is right. */
    @ParameterizedTest
    @CsvSource({
        "HIGHER, 0.049, true",
        "HIGHER, 0.05, false",
        "HIGHER, 0.051, false",
        "LOWER, 0.951, true",
        "LOWER, 0.95, false",
        "LOWER, 0.05, false",
        "UNKNOWN, 0, false",
        "UNKNOWN, 1, false"
    })
    void theOwnersDirectionIsContradictedBelowFivePercent(Widening widening, double widerUp, boolean contradicted) {
        assertThat(LeverAdvisor.contradicted(lever(widening), widerUp)).isEqualTo(contradicted);
    }

    @Test
    void atTheEndStopThereIsNoLeverLeft() {
        Advice advice = advise(test(20, CENTRE_HEAVY));
        assertThat(advice.kind()).isEqualTo(AdviceKind.NO_LEVER_LEFT);
        assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.CENTRE_HEAVY, AdviceReason.Kind.END_STOP);
    }

    /** The end stop is on the other side, but no move is expected to help: quarter points alone. */
    @Test
    void whereNoMoveHelpsItIsReported() {
        Advice advice = advise(at(20, stated(18, 2, 0, 1, 9)));
        assertThat(advice.kind()).isEqualTo(AdviceKind.CANNOT_TELL_BETTER);
        assertThat(kinds(advice)).endsWith(AdviceReason.Kind.NO_BETTER);
    }

    @Test
    void onlyLeversWithASettingAreMoved() {
        Lever other = new Lever("drop point", "", 0, 20, 1, Widening.HIGHER);
        Advice advice = advise(List.of(other, lever(Widening.HIGHER)), IN_ORDER, test(10, CENTRE_HEAVY));
        assertThat(advice.moves()).extracting(LeverMove::lever).containsExactly(LEVER);
        Advice none = advise(List.of(other), IN_ORDER, test(10, CENTRE_HEAVY));
        assertThat(none.kind()).isEqualTo(AdviceKind.NO_LEVER_LEFT);
        assertThat(kinds(none)).containsExactly(AdviceReason.Kind.CENTRE_HEAVY, AdviceReason.Kind.NO_LEVER);
    }

    /** The last step overshot, and there is room for that one setting only: back to the one that did better. */
    @Test
    void withNothingBetterInSightItGoesBackToTheBest() {
        for (Widening widening : List.of(Widening.HIGHER, Widening.LOWER, Widening.UNKNOWN)) {
            Lever twoSettings = new Lever(LEVER, "mark", 10, 12, 2, widening);
            AdviceInput.DoneTest better = at(10, stated(12, 2, 0, 1, 1));
            Advice advice = advise(List.of(twoSettings), IN_ORDER, better, at(12, stated(26, 2, 0, 1, 1)));
            assertThat(advice.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
            assertThat(advice.moves())
                    .containsExactly(new LeverMove(LEVER, "mark", 12, 10, -1, widening == Widening.LOWER));
            assertThat(advice.expected()).isEqualTo(new ExpectedCv(12, new Interval(6, 24)));
            assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.BACK);
            assertThat(advice.reasons().get(0).numbers()).containsExactly(12.0);
        }
    }

    /** A better test whose settings differ in nothing that can be moved back is no way back. */
    @Test
    void thereIsNoWayBackWithoutASetting() {
        AdviceInput.DoneTest unknown = new AdviceInput.DoneTest(stated(12, 2, 0, 1, 1), Map.of(), null);
        Advice advice = advise(unknown, at(11, stated(18, 2, 0, 1, 1)));
        assertThat(advice.kind()).isEqualTo(AdviceKind.CANNOT_TELL_BETTER);
        assertThat(advice.expected()).isNull();
    }

    @Test
    void aLeverOfUnknownDirectionMayBeTried() {
        Advice advice = advise(
                List.of(lever(Widening.UNKNOWN)),
                IN_ORDER,
                test(10, CENTRE_HEAVY),
                test(11, 8.4, 9.4, 11, 12.4, 11, 9.4, 8.4));
        // one step up took from the centre: more of it
        assertThat(advice.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        assertThat(advice.moves().get(0).steps()).isPositive();
        assertThat(advice.moves().get(0).wider()).isTrue();
    }

    /** Each has room for one step only, and one step is far too little. */
    @Test
    void twoLeversOnlyWhereTheOwnerAllowsIt() {
        List<Lever> levers = List.of(
                new Lever("short", "", 0, 10, 1, Widening.HIGHER), new Lever("long", "", 0, 10, 1, Widening.HIGHER));
        Map<String, Double> before = Map.of("short", 7.0, "long", 7.0);
        Map<String, Double> now = Map.of("short", 9.0, "long", 9.0);
        for (boolean two : new boolean[] {false, true}) {
            Advice advice = Advisor.advise(new AdviceInput(
                    List.of(
                            new AdviceInput.DoneTest(
                                    TestFields.uniformity(5, 7.5, 12.5, 18, 12.5, 7.5, 5), before, null),
                            new AdviceInput.DoneTest(TestFields.uniformity(CENTRE_HEAVY), now, null)),
                    new LeverRules(levers, two),
                    IN_ORDER,
                    TestFields.BACK_AND_FORTH,
                    WindLimits.USUAL));
            assertThat(advice.moves()).hasSize(two ? 2 : 1);
            assertThat(kinds(advice)).contains(two ? AdviceReason.Kind.TWO_LEVERS : AdviceReason.Kind.ONE_LEVER);
        }
    }

    @Test
    void theExpectedCvLiesInItsInterval() {
        assertThatThrownBy(() -> new ExpectedCv(5, new Interval(6, 7))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ExpectedCv(-1, new Interval(-2, 7))).isInstanceOf(IllegalArgumentException.class);
        assertThat(new ExpectedCv(0, new Interval(0, 0)).percent()).isZero();
    }
}
