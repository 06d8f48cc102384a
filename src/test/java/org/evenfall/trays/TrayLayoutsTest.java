package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.evenfall.trays.TestFields.list;

import java.util.Collections;
import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    @CsvSource({"24, 4, 0.25", "24, 34, 0.25", "0, 7, 0.25", "24, 7, 0", "NaN, 7, 0.25", "24, 7, NaN"})
    void outOfRangeIsRefused(double width, int trays, double area) {
        assertThatThrownBy(() -> TrayLayouts.of(width, trays, area, DrivingPattern.BACK_AND_FORTH))
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
