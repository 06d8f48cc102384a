package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DirectionsTest {

    private static Lever lever(Widening widening) {
        return new Lever("lever", "", 0, 20, 1, widening);
    }

    private static double share(List<Directions> all, java.util.function.Predicate<Directions> which) {
        return all.stream().filter(which).mapToDouble(Directions::prior).sum();
    }

    @ParameterizedTest
    @CsvSource({"HIGHER, 0.9", "LOWER, 0.1", "UNKNOWN, 0.5", "UNANSWERED, 0.5"})
    void theOwnerIsBelievedNineTimesInTen(Widening widening, double up) {
        List<Directions> notMoved = Directions.all(List.of(lever(widening)), new boolean[] {false});
        assertThat(notMoved).hasSize(2).allMatch(one -> Math.abs(one.widerUp()[0] - up) < 1e-12);
        List<Directions> moved = Directions.all(List.of(lever(widening)), new boolean[] {true});
        assertThat(moved).hasSize(4);
        assertThat(share(moved, one -> one.widerUp()[0] == 1)).isCloseTo(up, within(1e-12));
        assertThat(share(moved, one -> one.widerUp()[0] == 0)).isCloseTo(1 - up, within(1e-12));
        assertThat(share(moved, Directions::folded)).isCloseTo(0.05, within(1e-12));
    }

    /** Only the second of three was moved. */
    @Test
    void eachMovedLeverIsOneWayOrTheOther() {
        List<Lever> three = List.of(lever(Widening.HIGHER), lever(Widening.LOWER), lever(Widening.UNKNOWN));
        List<Directions> all = Directions.all(three, new boolean[] {false, true, false});
        assertThat(all).hasSize(4);
        assertThat(all).allMatch(one -> one.widerUp()[0] == 0.9 && one.widerUp()[2] == 0.5);
        assertThat(share(all, one -> true)).isCloseTo(1, within(1e-12));
        assertThat(Directions.all(three, new boolean[] {true, true, true})).hasSize(16);
        // more than six are not split further
        List<Lever> many = Collections.nCopies(9, lever(Widening.HIGHER));
        boolean[] allMoved = {true, true, true, true, true, true, true, true, true};
        assertThat(Directions.all(many, allMoved)).hasSize(128).allMatch(one -> one.widerUp()[6] == 0.9);
    }

    /** Wider takes 5 % a step from the middle; past the neighbour it adds as much; half known is half believed. */
    @Test
    void theSlopeOfTheMiddle() {
        double[] up = {1, 0, 0.9, 0.5};
        assertThat(new Directions(1, false, up).centreSlope())
                .containsExactly(new double[] {-5, 5, -4, 0}, within(1e-12));
        assertThat(new Directions(1, true, up).centreSlope())
                .containsExactly(new double[] {5, -5, 4, 0}, within(1e-12));
        // 2.5², and 5² times what is not known of the sign: 1 − 0.8², 1
        assertThat(new Directions(1, false, up).slopeVariance())
                .containsExactly(new double[] {6.25, 6.25, 6.25 + 9, 6.25 + 25}, within(1e-12));
    }
}
