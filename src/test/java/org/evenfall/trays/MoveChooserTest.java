package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.trays.TestFields.stated;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoveChooserTest {

    private static final List<Lever> TWO_LEVERS =
            List.of(new Lever("A", "", 0, 20, 1, Widening.HIGHER), new Lever("B", "mm", 0, 20, 2, Widening.LOWER));
    private static final Map<String, Double> MIDDLE = Map.of("A", 10.0, "B", 10.0);

    /** Stated CV² of some moves; all others are bad. */
    private static final class StatedOutlook implements MoveOutlook {
        private final Map<List<Integer>, Double> squares = new HashMap<>();
        private final List<List<Integer>> asked = new ArrayList<>();
        private double widerUp = 0.5;

        StatedOutlook move(double square, Integer... steps) {
            squares.put(List.of(steps), square);
            return this;
        }

        @Override
        public double expectedSquare(int[] move) {
            List<Integer> steps = Arrays.stream(move).boxed().toList();
            asked.add(steps);
            return squares.getOrDefault(steps, 1000.0);
        }

        @Override
        public double probabilityWiderUp(int lever) {
            return widerUp;
        }
    }

    private static List<Integer> best(MoveOutlook outlook, boolean two, boolean quarters, Map<String, Double> before) {
        List<AdviceInput.DoneTest> tests = before == null
                ? List.of(new AdviceInput.DoneTest(stated(20, 2, 0, 9, 9), MIDDLE, null))
                : List.of(
                        new AdviceInput.DoneTest(stated(20, 2, 0, 9, 9), before, null),
                        new AdviceInput.DoneTest(stated(20, 2, 0, 9, 9), MIDDLE, null));
        int[] move = new MoveChooser(TWO_LEVERS, MIDDLE, outlook, tests, quarters).best(two);
        return move == null ? List.of() : Arrays.stream(move).boxed().toList();
    }

    private static List<Integer> best(MoveOutlook outlook) {
        return best(outlook, false, false, null);
    }

    /** CV 10 now: a move is worth a test when it takes more than 0.7 off. */
    @ParameterizedTest
    @CsvSource({"9.29, true", "9.301, false", "9.4, false"})
    void aMoveMustBeWorthATest(double cvAfter, boolean worth) {
        StatedOutlook outlook = new StatedOutlook().move(100, 0, 0).move(cvAfter * cvAfter, 1, 0);
        assertThat(best(outlook)).isEqualTo(worth ? List.of(1, 0) : List.of());
    }

    @Test
    void aTinyCvCannotBeImproved() {
        assertThat(best(new StatedOutlook().move(0.25, 0, 0).move(0, 1, 0))).isEmpty();
    }

    /** A step more must gain two hundredths of CV². */
    @ParameterizedTest
    @CsvSource({"39.1, 2", "39.3, 1", "40, 1"})
    void theSmallerOfNearlyEqualMoves(double twoSteps, int steps) {
        StatedOutlook outlook =
                new StatedOutlook().move(100, 0, 0).move(40, 1, 0).move(twoSteps, 2, 0);
        assertThat(best(outlook)).containsExactly(steps, 0);
    }

    /** Another lever than the first must be better by a twentieth. */
    @ParameterizedTest
    @CsvSource({"37.9, true", "38.1, false", "39, false"})
    void theOwnersFirstLeverComesFirst(double second, boolean other) {
        StatedOutlook outlook =
                new StatedOutlook().move(100, 0, 0).move(40, 1, 0).move(second, 0, 1);
        assertThat(best(outlook)).isEqualTo(other ? List.of(0, 1) : List.of(1, 0));
    }

    /** With significant quarter points a lever that was never moved counts 0.7 of its CV². */
    @ParameterizedTest
    @CsvSource({
        // first lever 40, second 54: 0.7 × 54 = 37.8 < 0.95 × 40; 0.7 × 54.4 = 38.08
        "54, true, true, 0, 1",
        "54.4, true, true, 1, 0",
        "54, false, true, 1, 0",
        "54, true, false, 1, 0"
    })
    void aLeverThatWasNeverMovedMayBeTried(double second, boolean quarters, boolean firstMovedBefore, int a, int b) {
        StatedOutlook outlook =
                new StatedOutlook().move(100, 0, 0).move(40, 1, 0).move(second, 0, 1);
        Map<String, Double> before = firstMovedBefore ? Map.of("A", 9.0, "B", 10.0) : Map.of("A", 9.0, "B", 8.0);
        assertThat(best(outlook, false, quarters, before)).containsExactly(a, b);
    }

    @Test
    void afterASingleTestNoLeverCountsAsNeverMoved() {
        // 80 × 0.7 would be worth a test, 90 is not
        StatedOutlook outlook = new StatedOutlook().move(100, 0, 0).move(90, 0, 1);
        assertThat(best(outlook, false, true, null)).isEmpty();
        assertThat(best(outlook, false, true, Map.of("A", 9.0, "B", 10.0))).containsExactly(0, 1);
    }

    @Test
    void threeStepsAtMostEitherWayAndOneLeverUnlessTwoAreAllowed() {
        StatedOutlook one = new StatedOutlook().move(100, 0, 0);
        best(one, false, false, null);
        assertThat(one.asked.subList(1, one.asked.size()))
                .containsExactlyInAnyOrder(
                        List.of(1, 0),
                        List.of(-1, 0),
                        List.of(0, 1),
                        List.of(0, -1),
                        List.of(2, 0),
                        List.of(-2, 0),
                        List.of(0, 2),
                        List.of(0, -2),
                        List.of(3, 0),
                        List.of(-3, 0),
                        List.of(0, 3),
                        List.of(0, -3));
        StatedOutlook two = new StatedOutlook().move(100, 0, 0);
        best(two, true, false, null);
        assertThat(two.asked.subList(1, two.asked.size()))
                .hasSize(12 + 12)
                .doesNotHaveDuplicates()
                .allMatch(move -> Math.abs(move.get(0)) + Math.abs(move.get(1)) <= 3)
                .contains(List.of(1, 1), List.of(1, -2), List.of(-2, 1), List.of(-1, -1));
    }

    @Test
    void noMovePassesAnEndStop() {
        StatedOutlook outlook = new StatedOutlook().move(100, 0, 0);
        Map<String, Double> settings = Map.of("A", 19.0, "B", 0.0);
        new MoveChooser(TWO_LEVERS, settings, outlook, List.of(), false).best(true);
        assertThat(outlook.asked)
                .contains(List.of(1, 0), List.of(-3, 0), List.of(0, 3), List.of(1, 2))
                .noneMatch(move -> move.get(0) > 1 || move.get(1) < 0);
    }

    @ParameterizedTest
    @CsvSource({
        // wider is up for A, down for B
        "20, 0, true, true",
        "19, 0, true, false",
        "20, 2, true, false",
        "0, 20, false, true",
        "1, 20, false, false",
        "0, 18, false, false",
        "20, 0, false, false"
    })
    void atTheEndStopOfEveryLever(double a, double b, boolean wider, boolean atEndStop) {
        MoveChooser chooser =
                new MoveChooser(TWO_LEVERS, Map.of("A", a, "B", b), new StatedOutlook(), List.of(), false);
        assertThat(chooser.atEndStop(wider)).isEqualTo(atEndStop);
    }

    @Test
    void aLeverOfUnknownDirectionIsNeverAtItsEndStop() {
        Lever unknown = new Lever("A", "", 0, 20, 1, Widening.UNKNOWN);
        assertThat(new MoveChooser(List.of(unknown), Map.of("A", 20.0), new StatedOutlook(), List.of(), false)
                        .atEndStop(true))
                .isFalse();
    }

    @Test
    void movesAreGivenInTheOwnersScale() {
        MoveChooser chooser = new MoveChooser(TWO_LEVERS, MIDDLE, new StatedOutlook(), List.of(), false);
        assertThat(chooser.moves(new int[] {-1, 2}))
                .containsExactly(new LeverMove("A", "", 10, 9, -1, false), new LeverMove("B", "mm", 10, 14, 2, false));
        assertThat(chooser.moves(new int[] {0, -3})).containsExactly(new LeverMove("B", "mm", 10, 4, -3, true));
    }

    /** Where the owner does not know, the tests show which way is wider. */
    @ParameterizedTest
    @CsvSource({"0.51, 1, true", "0.5, 1, true", "0.49, 1, false", "0.49, -1, true", "0.51, -1, false"})
    void anUnknownDirectionIsThatOfTheTests(double widerUp, int steps, boolean wider) {
        StatedOutlook outlook = new StatedOutlook();
        outlook.widerUp = widerUp;
        Lever unknown = new Lever("A", "", 0, 20, 1, Widening.UNKNOWN);
        assertThat(new MoveChooser(List.of(unknown), Map.of("A", 10.0), outlook, List.of(), false)
                        .moves(new int[] {steps}))
                .containsExactly(new LeverMove("A", "", 10, 10 + steps, steps, wider));
    }
}
