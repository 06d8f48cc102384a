package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.list;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TrayLayoutsTest {

    @Test
    void sevenTraysReachHalfWayToTheNextTramline() {
        TrayLayout layout = TrayLayouts.of(24, 7, 0.25, DrivingPattern.BACK_AND_FORTH);
        assertThat(layout.positionsM())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
                .containsExactly(-12.0, -8.0, -4.0, 0.0, 4.0, 8.0, 12.0);
        assertThat(layout.passForward()).containsExactly(false, true, false);
        assertThat(layout.passesM()).containsExactly(-24.0, 0.0, 24.0);
        assertThat(layout.moved()).isFalse();
        assertThat(layout.wheels()).isEqualTo(WheelMarks.USUAL);
        assertThat(TrayLayouts.of(24, 7, 0.25, DrivingPattern.ROUND_AND_ROUND).passForward())
                .containsExactly(true, true, true);
    }

    @ParameterizedTest
    @CsvSource({"4, 7", "27.9, 7", "28, 9", "31.9, 9", "32, 11", "35.9, 11", "36, 13", "60, 13"})
    void moreTraysAreProposedFromTwentyEightMetres(double width, int trays) {
        assertThat(TrayLayouts.proposedTrays(width)).isEqualTo(trays);
    }

    /** By hand: inner trays evenly to 5 m (Source: Lawrence, Yule, Jones 2006, abstract), outer ones from there to W/2. */
    @ParameterizedTest
    @CsvSource({
        "28, 9, 0 2.5 5 9.5 14",
        "31.9, 9, 0 2.5 5 10.475 15.95",
        "32, 11, 0 2.5 5 8.666666667 12.333333333 16",
        "36, 13, 0 1.666666667 3.333333333 5 9.333333333 13.666666667 18",
        "28, 13, 0 1.666666667 3.333333333 5 8 11 14",
        "27.9, 9, 0 3.4875 6.975 10.4625 13.95",
        "28, 7, 0 4.666666667 9.333333333 14",
        "28, 10, 1.555555556 4.666666667 7.777777778 10.888888889 14",
        "36, 15, 0 2.571428571 5.142857143 7.714285714 10.285714286 12.857142857 15.428571429 18"
    })
    void placesOnTheRight(double width, int trays, String right) {
        List<Double> places = TrayLayouts.of(width, trays, 0.25, DrivingPattern.BACK_AND_FORTH)
                .positionsM();
        List<Double> expected =
                Arrays.stream(right.split(" ")).map(Double::valueOf).toList();
        assertThat(places.subList(trays / 2, trays))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-8 ? 0 : 1)
                .containsExactlyElementsOf(expected);
    }

    static Stream<Arguments> everyWidthAndNumber() {
        return DoubleStream.of(4, 24, 27.9, 28, 31.9, 32, 35.9, 36, 48, 60)
                .boxed()
                .flatMap(width -> IntStream.rangeClosed(TrayLayouts.FEWEST_TRAYS, TrayLayouts.MOST_TRAYS)
                        .mapToObj(trays -> Arguments.of(width, trays)));
    }

    @ParameterizedTest
    @MethodSource("everyWidthAndNumber")
    void traysRiseAreSymmetricAndReachTheEdge(double width, int trays) {
        TrayLayout layout = TrayLayouts.of(width, trays, 0.25, DrivingPattern.ROUND_AND_ROUND);
        List<Double> places = layout.positionsM();
        List<Double> even = TrayLayouts.even(width, trays, 0.25, DrivingPattern.ROUND_AND_ROUND)
                .positionsM();
        assertThat(places).hasSize(trays);
        assertThat(places.get(trays - 1)).isCloseTo(width / 2, within(1e-9));
        double largest = 0;
        for (int i = 0; i < trays; i++) {
            assertThat(places.get(i)).isCloseTo(-places.get(trays - 1 - i), within(1e-9));
            double gap = i == 0 ? 1 : places.get(i) - places.get(i - 1);
            assertThat(gap).isPositive();
            largest = i == 0 ? 0 : Math.max(largest, gap);
            assertThat(even.get(i)).isCloseTo(width * i / (trays - 1.0) - width / 2, within(1e-9));
        }
        assertThat(layout.largestGapM()).isEqualTo(largest);
        boolean closer = width >= 28 && (trays == 9 || trays == 11 || trays == 13);
        assertThat(places.equals(even)).isEqualTo(!closer);
        if (closer) {
            assertThat(places.stream().filter(x -> Math.abs(x) <= 5 + 1e-9)).hasSize(trays == 13 ? 7 : 5);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "24, 4, 0.25",
        "24, 34, 0.25",
        "0, 7, 0.25",
        "24, 7, 0",
        "NaN, 7, 0.25",
        "NaN, 9, 0.25",
        "24, 7, NaN",
        "28, 9, 0"
    })
    void outOfRangeIsRefused(double width, int trays, double area) {
        assertThatThrownBy(() -> TrayLayouts.of(width, trays, area, DrivingPattern.BACK_AND_FORTH))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TrayLayouts.even(width, trays, area, DrivingPattern.BACK_AND_FORTH))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"5", "33"})
    void fiveToThirtyThreeTrays(int trays) {
        assertThat(TrayLayouts.of(24, trays, 0.25, DrivingPattern.BACK_AND_FORTH)
                        .positionsM())
                .hasSize(trays);
    }

    @ParameterizedTest
    @CsvSource({"0", "-0.5", "NaN"})
    void aTrayHasASide(double acrossM) {
        TrayLayout even = TrayLayouts.of(24, 7, 0.25, DrivingPattern.BACK_AND_FORTH);
        assertThatThrownBy(() -> TrayLayouts.asideFrom(WheelMarks.USUAL, even, acrossM))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5", "NaN, 0.5", "1.8, -0.1", "1.8, NaN"})
    void wheelMarksHaveATrack(double track, double tyre) {
        assertThatThrownBy(() -> new WheelMarks(track, tyre)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new WheelMarks(0.1, 0).reachM(0.5)).isEqualTo(0.3);
    }

    private static TrayCatches catches(int trays, double gram, double width, double area, int runs, double step) {
        List<Double> grams = new java.util.ArrayList<>(Collections.nCopies(trays, 1.0));
        grams.set(0, gram);
        return new TrayCatches(
                Collections.nCopies(trays, 0.0), grams, width, DrivingPattern.BACK_AND_FORTH, area, runs, 0.02, step);
    }

    @ParameterizedTest
    @CsvSource({
        "4, 1, 24, 0.25, 1, 0",
        "5, -0.1, 24, 0.25, 1, 0",
        "5, NaN, 24, 0.25, 1, 0",
        "5, 1, 0, 0.25, 1, 0",
        "5, 1, 24, 0, 1, 0",
        "5, 1, 24, 0.25, 0, 0",
        "5, 1, 24, 0.25, 1, -0.1"
    })
    void catchesOutOfRangeAreRefused(int trays, double gram, double width, double area, int runs, double step) {
        assertThatThrownBy(() -> catches(trays, gram, width, area, runs, step))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatCode(() -> catches(5, 0, 24, 0.25, 1, 0)).doesNotThrowAnyException();
    }

    @Test
    void catchesAreNotAllZeroAndAsManyAsPlaces() {
        assertThatThrownBy(() -> new TrayCatches(
                        list(0, 1, 2, 3, 4), list(0, 0, 0, 0, 0), 24, DrivingPattern.BACK_AND_FORTH, 0.25, 1, 0.02, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TrayCatches(
                        list(0, 1, 2, 3), list(1, 1, 1, 1, 1), 24, DrivingPattern.BACK_AND_FORTH, 0.25, 1, 0.02, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TrayCatches(
                        list(0, 1, 2, 3, 4), list(1, 1, 1, 1, 1), 24, DrivingPattern.BACK_AND_FORTH, 0.25, 1, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tramlinesHaveAWidth() {
        assertThatThrownBy(() -> new Tramlines(0, DrivingPattern.BACK_AND_FORTH))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(catches(5, 1, 24, 0.25, 1, 0).tramlines())
                .isEqualTo(new Tramlines(24, DrivingPattern.BACK_AND_FORTH));
    }
}
