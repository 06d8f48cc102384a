package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;

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
        public double squareAhead(int[] move) {
            List<Integer> steps = Arrays.stream(move).boxed().toList();
            asked.add(steps);
            return squares.getOrDefault(steps, 1000.0);
        }

        @Override
        public double probabilityEmptiesMiddle(int lever) {
            return widerUp;
        }

        @Override
        public double probabilityWiderUp(int lever) {
            return lever == 0 ? widerUp : 1 - widerUp;
        }
    }

    private static final int[] NOT_MOVED = {0, 0};

    private static List<Integer> best(MoveOutlook outlook, boolean two) {
        int[] move = new MoveChooser(TWO_LEVERS, MIDDLE, NOT_MOVED, outlook).best(two, 0.7);
        return move == null ? List.of() : Arrays.stream(move).boxed().toList();
    }

    private static List<Integer> best(MoveOutlook outlook) {
        return best(outlook, false);
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

    /** A step taken wrongly may be taken back and six more the other way; B has room for five. */
    @ParameterizedTest
    @CsvSource({"2, -8, 6", "-2, -6, 8", "0, -6, 6"})
    void whatWasMovedLastMayBeTakenBack(int last, int lowest, int highest) {
        StatedOutlook outlook = new StatedOutlook().move(100, 0, 0);
        MoveChooser chooser = new MoveChooser(TWO_LEVERS, MIDDLE, new int[] {last, 0}, outlook);
        chooser.best(false, 0.7);
        assertThat(outlook.asked)
                .contains(List.of(lowest, 0), List.of(highest, 0), List.of(0, -5), List.of(0, 5))
                .noneMatch(move -> move.get(0) < lowest || move.get(0) > highest || Math.abs(move.get(1)) > 5);
        assertThat(chooser.takesBack(new int[] {1, 0})).isEqualTo(last < 0);
        assertThat(chooser.takesBack(new int[] {-1, 1})).isEqualTo(last > 0);
    }

    /** Only a lever of unknown direction is probed, two steps to the side with more room. */
    @ParameterizedTest
    @CsvSource({"10, 0.5, 2", "11, 0.5, -2", "12, 0.11, -2", "12, 0.1, 0", "12, 0.9, 0", "9, 0.89, 2"})
    void aProbe(double setting, double widerUp, int steps) {
        StatedOutlook outlook = new StatedOutlook();
        outlook.widerUp = widerUp;
        Lever unknown = new Lever("A", "", 0, 20, 1, Widening.UNKNOWN);
        int[] probe = new MoveChooser(List.of(unknown), Map.of("A", setting), new int[1], outlook).probe();
        assertThat(probe == null ? 0 : probe[0]).isEqualTo(steps);
    }

    @Test
    void aLeverOfKnownDirectionIsNotProbedAndOneStepOfRoomIsEnough() {
        assertThat(new MoveChooser(TWO_LEVERS, MIDDLE, NOT_MOVED, new StatedOutlook()).probe())
                .isNull();
        Lever small = new Lever("A", "", 0, 1, 1, Widening.UNKNOWN);
        assertThat(new MoveChooser(List.of(small), Map.of("A", 1.0), new int[1], new StatedOutlook()).probe())
                .containsExactly(-1);
    }

    @Test
    void sixStepsAtMostEitherWayAndOneLeverUnlessTwoAreAllowed() {
        StatedOutlook one = new StatedOutlook().move(100, 0, 0);
        best(one, false);
        // B has room for five steps each way
        List<List<Integer>> expected = new ArrayList<>();
        for (int steps = 1; steps <= 6; steps++) {
            expected.add(List.of(steps, 0));
            expected.add(List.of(-steps, 0));
            if (steps <= 5) {
                expected.add(List.of(0, steps));
                expected.add(List.of(0, -steps));
            }
        }
        assertThat(one.asked.subList(1, one.asked.size())).containsExactlyInAnyOrderElementsOf(expected);
        StatedOutlook two = new StatedOutlook().move(100, 0, 0);
        best(two, true);
        assertThat(two.asked.subList(1, two.asked.size()))
                .hasSize(22 + 4 * 15)
                .doesNotHaveDuplicates()
                .allMatch(move -> Math.abs(move.get(0)) + Math.abs(move.get(1)) <= 6)
                .contains(List.of(1, 1), List.of(1, -5), List.of(-5, 1), List.of(-3, -3));
    }

    /** Two levers must be a quarter better than one, apart from the other shares. */
    @ParameterizedTest
    @CsvSource({"34.3, false", "34.1, false", "28.1, false", "27.9, true"})
    void aPairMustBeMuchBetter(double both, boolean pair) {
        StatedOutlook outlook =
                new StatedOutlook().move(100, 0, 0).move(40, 2, 0).move(both, 1, 1);
        assertThat(best(outlook, true)).isEqualTo(pair ? List.of(1, 1) : List.of(2, 0));
    }

    @Test
    void noMovePassesAnEndStop() {
        StatedOutlook outlook = new StatedOutlook().move(100, 0, 0);
        Map<String, Double> settings = Map.of("A", 19.0, "B", 0.0);
        new MoveChooser(TWO_LEVERS, settings, NOT_MOVED, outlook).best(true, 0.7);
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
        MoveChooser chooser = new MoveChooser(TWO_LEVERS, Map.of("A", a, "B", b), NOT_MOVED, new StatedOutlook());
        assertThat(chooser.atEndStop(wider)).isEqualTo(atEndStop);
    }

    @Test
    void aLeverOfUnknownDirectionIsNeverAtItsEndStop() {
        Lever unknown = new Lever("A", "", 0, 20, 1, Widening.UNKNOWN);
        assertThat(new MoveChooser(List.of(unknown), Map.of("A", 20.0), new int[1], new StatedOutlook())
                        .atEndStop(true))
                .isFalse();
    }

    @Test
    void movesAreGivenInTheOwnersScale() {
        StatedOutlook outlook = new StatedOutlook();
        outlook.widerUp = 0.9;
        MoveChooser chooser = new MoveChooser(TWO_LEVERS, MIDDLE, NOT_MOVED, outlook);
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
        assertThat(new MoveChooser(List.of(unknown), Map.of("A", 10.0), new int[1], outlook).moves(new int[] {steps}))
                .containsExactly(new LeverMove("A", "", 10, 10 + steps, steps, wider));
    }
}
