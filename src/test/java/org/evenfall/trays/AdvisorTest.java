package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.CENTRE_HEAVY;
import static org.evenfall.trays.TestFields.IN_ORDER;
import static org.evenfall.trays.TestFields.LEVER;
import static org.evenfall.trays.TestFields.advise;
import static org.evenfall.trays.TestFields.at;
import static org.evenfall.trays.TestFields.kinds;
import static org.evenfall.trays.TestFields.lever;
import static org.evenfall.trays.TestFields.shaped;
import static org.evenfall.trays.TestFields.stated;
import static org.evenfall.trays.TestFields.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of cure: every condition, every kind of advice. */
class AdvisorTest {

    private static final List<Lever> ONE_LEVER = List.of(lever(Widening.HIGHER));

    /** The kinds of advice, each from the plainest case that leads to it. */
    static Stream<Arguments> everyKind() {
        AdviceInput.DoneTest uneven = test(10, CENTRE_HEAVY);
        AdviceInput.DoneTest oneSided = at(10, stated(18, 2, -15, 3, 0));
        return Stream.of(
                Arguments.of(AdviceKind.DO_A_TEST, ONE_LEVER, IN_ORDER, List.of()),
                Arguments.of(AdviceKind.REPEAT_TEST, ONE_LEVER, IN_ORDER, List.of(at(10, stated(12, 11, 0, 8, 0)))),
                Arguments.of(
                        AdviceKind.WAIT_FOR_WIND,
                        ONE_LEVER,
                        IN_ORDER,
                        List.of(new AdviceInput.DoneTest(uneven.evenness(), Map.of(LEVER, 10.0), 4.01))),
                Arguments.of(
                        AdviceKind.LEVEL_HEIGHT_TYRES,
                        ONE_LEVER,
                        new MachineOrder(false, true, true),
                        List.of(oneSided)),
                Arguments.of(AdviceKind.PTO_SPEED, ONE_LEVER, new MachineOrder(true, false, true), List.of(oneSided)),
                Arguments.of(AdviceKind.OUTLETS_AND_VANES, ONE_LEVER, IN_ORDER, List.of(oneSided)),
                Arguments.of(AdviceKind.MOVE_LEVER, ONE_LEVER, IN_ORDER, List.of(uneven)),
                Arguments.of(AdviceKind.KEEP, ONE_LEVER, IN_ORDER, List.of(at(10, stated(5, 1, 0, 4, 0)))),
                Arguments.of(
                        AdviceKind.CANNOT_TELL_BETTER, ONE_LEVER, IN_ORDER, List.of(at(10, stated(18, 2, 1, 1, 1)))),
                Arguments.of(AdviceKind.NO_LEVER_LEFT, List.of(), IN_ORDER, List.of(uneven)),
                Arguments.of(
                        AdviceKind.CONFIRM_DIRECTION,
                        // no way back below 13
                        List.of(new Lever(LEVER, "", 13, 20, 1, Widening.HIGHER)),
                        IN_ORDER,
                        List.of(test(10, 8.6, 9.5, 11, 11.9, 11, 9.5, 8.3), test(13, 5.5, 8, 12.5, 16, 12.5, 8, 5.5))));
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void everyKindIsReached(AdviceKind kind, List<Lever> levers, MachineOrder order, List<AdviceInput.DoneTest> tests) {
        Advice advice = advise(levers, order, tests.toArray(AdviceInput.DoneTest[]::new));
        assertThat(advice.kind()).isEqualTo(kind);
        assertThat(advice.moves().isEmpty()).isEqualTo(kind != AdviceKind.MOVE_LEVER);
    }

    @Test
    void theListHasEveryKind() {
        assertThat(everyKind().map(arguments -> arguments.get()[0])).containsExactly((Object[]) AdviceKind.values());
    }

    /** Level, PTO speed and outlets in order or not × one side a little or much less, first test at these settings. */
    @ParameterizedTest
    @CsvSource({
        // one side: never a lever first
        "true, true, true, 12, OUTLETS_AND_VANES",
        "true, true, false, 12, OUTLETS_AND_VANES",
        "true, false, true, 12, PTO_SPEED",
        "true, false, false, 12, PTO_SPEED",
        "false, true, true, 12, LEVEL_HEIGHT_TYRES",
        // symmetrical: the lever, once PTO speed and outlets were looked at
        "true, true, true, 1, MOVE_LEVER",
        "false, true, true, 1, MOVE_LEVER",
        "true, true, false, 1, OUTLETS_AND_VANES",
        "true, false, true, 1, PTO_SPEED",
        "false, false, false, 1, PTO_SPEED"
    })
    void theOrderOfCure(boolean level, boolean pto, boolean outlets, double side, AdviceKind kind) {
        MachineOrder order = new MachineOrder(level, pto, outlets);
        for (int left : new int[] {-1, 1}) {
            for (int centre : new int[] {-1, 1}) {
                Advice advice = advise(ONE_LEVER, order, at(10, stated(22, 2, left * side, 24 * centre, 0)));
                assertThat(advice.kind()).as("side %s, centre %s", left, centre).isEqualTo(kind);
                if (kind == AdviceKind.MOVE_LEVER) {
                    assertThat(advice.moves().get(0).wider()).isEqualTo(centre > 0);
                    assertThat(kinds(advice).get(0))
                            .isEqualTo(centre > 0 ? AdviceReason.Kind.CENTRE_HEAVY : AdviceReason.Kind.OVERLAP_HEAVY);
                    assertThat(advice.reasons().get(0).numbers()).containsExactly(24.0);
                } else {
                    assertThat(advice.moves()).isEmpty();
                }
            }
        }
    }

    /** Which reasons go with it; left less right has the other sign than the shape, midway twice its size. */
    @Test
    void theReasonsOfOneSide() {
        AdviceInput.DoneTest test = at(10, stated(22, 2, -12, 0.5, 0));
        Advice level = advise(ONE_LEVER, new MachineOrder(false, true, true), test);
        assertThat(kinds(level)).containsExactly(AdviceReason.Kind.ONE_SIDE, AdviceReason.Kind.LEVEL_FIRST);
        assertThat(level.reasons().get(0).numbers().get(0)).isCloseTo(24, within(0.1));
        assertThat(level.reasons().get(0).numbers().get(1)).isEqualTo(14);
        MachineOrder ptoOff = new MachineOrder(true, false, true, List.of(), 0);
        assertThat(kinds(advise(ONE_LEVER, ptoOff, test)))
                .containsExactly(AdviceReason.Kind.ONE_SIDE, AdviceReason.Kind.PTO_FIRST);
        MachineOrder outletsOff = new MachineOrder(true, true, false, List.of(), 0);
        assertThat(kinds(advise(ONE_LEVER, outletsOff, test)))
                .containsExactly(AdviceReason.Kind.ONE_SIDE, AdviceReason.Kind.OUTLETS_FIRST);
        assertThat(kinds(advise(ONE_LEVER, IN_ORDER, test)))
                .containsExactly(AdviceReason.Kind.ONE_SIDE, AdviceReason.Kind.VANES_AGAIN);
    }

    /** The vanes are asked for once; a second one-sided test with all in order allows the lever and names the side. */
    @Test
    void afterTheVanesTheLeverIsAllowed() {
        AdviceInput.DoneTest test = at(10, shaped(3, 14, 22, 0));
        assertThat(advise(ONE_LEVER, IN_ORDER, test).kind()).isEqualTo(AdviceKind.OUTLETS_AND_VANES);
        for (double lever : new double[] {10, 11}) {
            Advice second = advise(ONE_LEVER, IN_ORDER, test, at(lever, shaped(3, 14, 22, 0)));
            assertThat(second.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
            assertThat(kinds(second)).contains(AdviceReason.Kind.STILL_ONE_SIDE);
        }
        // no earlier test was one-sided, or the level is open, or both sides have nothing in common: no lever
        assertThat(advise(ONE_LEVER, IN_ORDER, at(9, shaped(3, 0, 22, 0)), test).kind())
                .isEqualTo(AdviceKind.OUTLETS_AND_VANES);
        assertThat(advise(ONE_LEVER, new MachineOrder(false, true, true), test, test)
                        .kind())
                .isEqualTo(AdviceKind.LEVEL_HEIGHT_TYRES);
        AdviceInput.DoneTest side = at(11, shaped(3, 25, 0, 0));
        assertThat(advise(ONE_LEVER, IN_ORDER, test, side).kind()).isEqualTo(AdviceKind.OUTLETS_AND_VANES);
    }

    static Stream<KnownFault> faults() {
        return Stream.of(
                KnownFault.seen(
                        AdviceKind.OUTLETS_AND_VANES, AdviceReason.about(AdviceReason.Kind.VANE_WORN, "long", -1, 7)),
                KnownFault.seen(AdviceKind.LEVEL_HEIGHT_TYRES, AdviceReason.of(AdviceReason.Kind.LEVEL_OFF, 8)),
                KnownFault.seen(AdviceKind.PTO_SPEED, AdviceReason.of(AdviceReason.Kind.PTO_OFF, 480, 540)),
                KnownFault.seen(AdviceKind.OUTLETS_AND_VANES, AdviceReason.of(AdviceReason.Kind.OUTLETS_UNEQUAL, -15)));
    }

    private static MachineOrder with(KnownFault... faults) {
        return new MachineOrder(true, true, true, List.of(faults), 0);
    }

    /** Whatever an uneven field would ask for, lever, repeat or more runs: the fault comes first. */
    @ParameterizedTest
    @MethodSource("faults")
    void aKnownFaultComesFirst(KnownFault fault) {
        for (Uniformity test : List.of(
                TestFields.uniformity(CENTRE_HEAVY),
                stated(12, 11, 0, 8, 0),
                stated(18, 2, 1, 1, 1),
                TestFields.uniformity(10, 10, 0, 10, 10, 10, 10),
                stated(18, 2, 12, 3, 0))) {
            Advice advice = advise(ONE_LEVER, with(fault), at(10, test));
            assertThat(advice.kind()).isEqualTo(fault.kind());
            assertThat(advice.reasons())
                    .containsExactly(fault.evidence(), AdviceReason.of(AdviceReason.Kind.MEND_FIRST));
        }
    }

    /** An even field is kept, the fault is named; one further move is not made. */
    @ParameterizedTest
    @MethodSource("faults")
    void anEvenFieldIsKeptAndTheFaultNamed(KnownFault fault) {
        for (double cv : new double[] {5, 10}) {
            Advice advice = advise(ONE_LEVER, with(fault), at(10, stated(cv, 1, 0, 12, 0)));
            assertThat(advice.kind()).isEqualTo(AdviceKind.KEEP);
            assertThat(kinds(advice))
                    .containsExactly(
                            AdviceReason.Kind.KEEP, fault.evidence().kind(), AdviceReason.Kind.MEND_ALL_THE_SAME);
        }
    }

    /** What was seen comes before the wind, the wind before what was not looked at. */
    @Test
    void seenThenWindThenUnseen() {
        KnownFault seen = faults().toList().get(1);
        KnownFault unseen = KnownFault.unseen(AdviceKind.PTO_SPEED, AdviceReason.Kind.PTO_UNSEEN);
        AdviceInput.DoneTest windy =
                new AdviceInput.DoneTest(TestFields.uniformity(CENTRE_HEAVY), Map.of(LEVER, 10.0), 4.5);
        assertThat(advise(ONE_LEVER, with(unseen, seen), windy).kind()).isEqualTo(AdviceKind.LEVEL_HEIGHT_TYRES);
        assertThat(advise(ONE_LEVER, with(unseen), windy).kind()).isEqualTo(AdviceKind.WAIT_FOR_WIND);
        Advice look = advise(ONE_LEVER, with(unseen), test(10, CENTRE_HEAVY));
        assertThat(look.kind()).isEqualTo(AdviceKind.PTO_SPEED);
        assertThat(kinds(look)).containsExactly(AdviceReason.Kind.PTO_UNSEEN, AdviceReason.Kind.LOOK_FIRST);
        // what was not looked at is not named with KEEP, and keeps a further move back
        assertThat(kinds(advise(ONE_LEVER, with(unseen), at(10, stated(10, 1, 0, 12, 0)))))
                .containsExactly(AdviceReason.Kind.KEEP);
    }

    @Test
    void skippedPartsDoNotKeepALeverBack() {
        MachineOrder order = new MachineOrder(false, true, true, List.of(), 7);
        assertThat(advise(ONE_LEVER, order, test(10, CENTRE_HEAVY)).kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        assertThatThrownBy(() -> new MachineOrder(true, true, true, List.of(), -1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A tray typed as 0 is asked back by its number on the ground; where only five lie, none may be left blank. */
    @Test
    void aSpoiltTrayIsAskedBack() {
        Uniformity typed0 = TestFields.uniformity(10, 10, 0, 10, 10, 10, 10);
        Advice advice = advise(ONE_LEVER, IN_ORDER, at(10, typed0));
        assertThat(advice.kind()).isEqualTo(AdviceKind.REPEAT_TEST);
        assertThat(advice.leaveBlank()).containsExactly(3);
        assertThat(advice.moreRuns()).isNull();
        assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.SPOILT_TRAY, AdviceReason.Kind.TYPE_OR_BLANK);
        AdviceReason spoilt = advice.reasons().get(0);
        assertThat(spoilt.numbers().get(0)).isEqualTo(3);
        assertThat(spoilt.numbers().get(1)).isZero();
        assertThat(spoilt.numbers().get(2)).isBetween(5.0, 9.5);
        assertThat(spoilt.numbers().get(3)).isBetween(10.5, 15.0);
        AdviceInput.DoneTest numbered =
                new AdviceInput.DoneTest(typed0, Map.of(LEVER, 10.0), 1.0, List.of(1, 2, 4, 5, 7, 8, 9), 3);
        assertThat(advise(ONE_LEVER, IN_ORDER, numbered).leaveBlank()).containsExactly(4);
        // a second test that says the same is believed
        assertThat(advise(ONE_LEVER, IN_ORDER, at(10, typed0), at(10, typed0)).leaveBlank())
                .isEmpty();
    }

    /** A CV at the limit is good; above it the lever is asked. */
    @ParameterizedTest
    @CsvSource({"9.99, KEEP", "10, KEEP", "10.01, CANNOT_TELL_BETTER"})
    void aCvAtTheLimitIsKept(double cvPercent, AdviceKind kind) {
        Advice advice = advise(at(10, stated(cvPercent, 1, 0, 1.9, 0)));
        assertThat(advice.kind()).isEqualTo(kind);
        if (kind == AdviceKind.KEEP) {
            assertThat(advice.reasons().get(0).numbers()).containsExactly(cvPercent, 95.0);
            assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.KEEP);
        }
    }

    /** An even field with a good tray CV is worth one more move where this is expected to take 1.5 points off; else less. */
    @ParameterizedTest
    @CsvSource({"8, 16, KEEP", "9.3, 16, MOVE_LEVER", "10, 16, MOVE_LEVER", "9.3, 9, KEEP", "10, 9, KEEP"})
    void aGoodCvMayStillBeImproved(double cvPercent, double centre, AdviceKind kind) {
        Advice advice = advise(at(10, stated(cvPercent, 1, 0, centre, 0)));
        assertThat(advice.kind()).isEqualTo(kind);
        if (kind == AdviceKind.MOVE_LEVER) {
            assertThat(kinds(advice)).startsWith(AdviceReason.Kind.JUST_UNDER, AdviceReason.Kind.CENTRE_HEAVY);
            assertThat(advice.reasons().get(0).numbers()).containsExactly(cvPercent);
        } else {
            assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.KEEP);
        }
    }

    @Test
    void aGoodCvIsKeptWhereCentreIsNotSignificantOrOneSideIsTheMatter() {
        assertThat(advise(at(10, stated(9.9, 1, 0, 2, 9))).kind()).isEqualTo(AdviceKind.KEEP);
        assertThat(advise(at(10, stated(9.9, 1, 9, 16, 0))).kind()).isEqualTo(AdviceKind.KEEP);
        assertThat(advise(at(10, stated(9.9, 1, 0.5, 16, 0))).kind()).isEqualTo(AdviceKind.MOVE_LEVER);
    }

    /** No move whose reading is not expected to be lower. */
    @Test
    void aFurtherMoveFromAGoodCvMustBeBetter() {
        Advice advice = advise(at(10, stated(9.9, 1, 0, 16, 2)));
        assertThat(advice.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        assertThat(advice.expected().percent()).isLessThan(9.9);
        // most of it is no shape that a lever changes
        assertThat(advise(at(10, stated(9.9, 1, 0, 2.5, 0))).kind()).isEqualTo(AdviceKind.KEEP);
    }

    /** Noise above 0.7 of the CV, or no CV of the machine left, asks for a repeat. */
    @ParameterizedTest
    @CsvSource({"13.9, MOVE_LEVER", "14, MOVE_LEVER", "14.01, REPEAT_TEST", "20, REPEAT_TEST", "30, REPEAT_TEST"})
    void aNoisyTestIsRepeated(double noisePercent, AdviceKind kind) {
        Advice advice = advise(at(10, stated(20, noisePercent, 0, 10, 0)));
        assertThat(advice.kind()).isEqualTo(kind);
        if (kind == AdviceKind.REPEAT_TEST) {
            assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.NOISE);
            assertThat(advice.reasons().get(0).numbers()).containsExactly(noisePercent, 2.0);
            assertThat(advice.moreRuns()).isEqualTo(2);
        }
    }

    /** One run with noise n needs (n/5)² in all: one more up to 7.07 %, more than two are not asked for. */
    @ParameterizedTest
    @CsvSource({"5, 1, 1", "7.07, 1, 1", "7.08, 1, 2", "20, 1, 2", "6, 3, 2", "5.7, 3, 1", "5.8, 3, 2", "4, 1, 1"})
    void howManyMoreRuns(double noisePercent, int runs, int more) {
        assertThat(RepeatAdvisor.moreRuns(noisePercent, runs)).isEqualTo(more);
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2, true", "3, false", "4, false"})
    void afterThreeRepeatsTheNoiseIsAccepted(int repeats, boolean again) {
        List<AdviceInput.DoneTest> tests = new ArrayList<>();
        for (int i = 0; i < repeats; i++) {
            // noise of the mean is 16 % of a CV of 22 %, whatever the number of repeats
            tests.add(at(10, shaped(16 * Math.sqrt(repeats), 0, 26, 0)));
        }
        Advice advice = advise(tests.toArray(AdviceInput.DoneTest[]::new));
        assertThat(advice.kind() == AdviceKind.REPEAT_TEST).isEqualTo(again);
        assertThat(kinds(advice).contains(AdviceReason.Kind.NOISE)).isEqualTo(again);
        assertThat(kinds(advice).contains(AdviceReason.Kind.POOLED)).isEqualTo(repeats > 1);
        if (repeats > 1) {
            assertThat(advice.reasons().get(0).numbers().get(0)).isEqualTo(repeats);
            assertThat(advice.reasons().get(0).numbers().get(1))
                    .isCloseTo(tests.get(0).evenness().cvPercent(), within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"3.99, MOVE_LEVER", "4, MOVE_LEVER", "4.01, WAIT_FOR_WIND"})
    void theWindOfTheLastTestCounts(double windMPerS, AdviceKind kind) {
        Uniformity uneven = TestFields.uniformity(CENTRE_HEAVY);
        Advice advice = advise(new AdviceInput.DoneTest(uneven, Map.of(LEVER, 10.0), windMPerS));
        assertThat(advice.kind()).isEqualTo(kind);
        if (kind == AdviceKind.WAIT_FOR_WIND) {
            assertThat(advice.reasons()).containsExactly(AdviceReason.of(AdviceReason.Kind.WINDY, windMPerS));
        }
        assertThat(advise(
                                new AdviceInput.DoneTest(uneven, Map.of(LEVER, 9.0), 6.0),
                                new AdviceInput.DoneTest(uneven, Map.of(LEVER, 10.0), null))
                        .kind())
                .isNotEqualTo(AdviceKind.WAIT_FOR_WIND);
    }

    @Test
    void withoutAnEvenShapeThereIsNoLever() {
        Advice advice = advise(at(10, stated(18, 2, 1, 1, 1)));
        assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.NO_SHAPE);
        // shapes that cannot be separated: two places only
        Uniformity two = UniformityCalculator.of(new TrayCatches(
                TestFields.list(-4, 0, 4, 4, -4),
                TestFields.list(8, 14, 8, 8, 8),
                28,
                org.evenfall.flight.DrivingPattern.BACK_AND_FORTH,
                0.25,
                3,
                0.028,
                0));
        assertThat(kinds(advise(at(10, two)))).containsExactly(AdviceReason.Kind.NO_SHAPE);
    }

    @Test
    void repeatsThatAreGoodTogetherAreKept() {
        AdviceInput.DoneTest one = test(10, 8.4, 11, 9, 11.5, 9, 11.2, 9.9);
        AdviceInput.DoneTest other = test(10, 11.4, 9, 11, 8.8, 11, 8.9, 9.9);
        assertThat(one.evenness().cvPercent()).isGreaterThan(10);
        assertThat(other.evenness().cvPercent()).isGreaterThan(10);
        Advice advice = advise(one, other);
        assertThat(advice.kind()).isEqualTo(AdviceKind.KEEP);
        assertThat(kinds(advice)).containsExactly(AdviceReason.Kind.POOLED, AdviceReason.Kind.KEEP);
    }

    @Test
    void reasonsCarryTheirNumbers() {
        assertThatThrownBy(() -> AdviceReason.of(AdviceReason.Kind.NOISE)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AdviceReason.of(AdviceReason.Kind.NO_SHAPE, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aTestHasNoNegativeWindAndALastTestNeedsATest() {
        Uniformity any = stated(18, 2, 1, 1, 1);
        assertThatThrownBy(() -> new AdviceInput.DoneTest(any, Map.of(), -0.1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new AdviceInput.DoneTest(any, Map.of(), 0.1, List.of(1, 2), 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new AdviceInput.DoneTest(any, Map.of(), 0.1, List.of(1, 2, 3, 4, 5, 6, 7), 0))
                .isInstanceOf(IllegalArgumentException.class);
        AdviceInput none = new AdviceInput(
                List.of(), new LeverRules(ONE_LEVER, false), IN_ORDER, TestFields.BACK_AND_FORTH, WindLimits.USUAL);
        assertThatThrownBy(none::last).isInstanceOf(NoSuchElementException.class);
    }
}
