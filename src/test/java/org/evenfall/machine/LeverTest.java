package org.evenfall.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeverTest {

    private static final Lever LEVER = new Lever("long vane", "", 10, 14, 0.5, Widening.LOWER);

    @ParameterizedTest
    @CsvSource({
        "9.99, 0, 8",
        "10, 0, 8",
        "10.2, 0, 7",
        "10.5, 1, 7",
        "13.5, 7, 1",
        "13.8, 7, 0",
        "14, 8, 0",
        "14.1, 8, 0"
    })
    void wholeStepsToTheEndStops(double setting, int down, int up) {
        assertThat(LEVER.stepsDown(setting)).isEqualTo(down);
        assertThat(LEVER.stepsUp(setting)).isEqualTo(up);
    }

    /** 0.1 is no binary number: rounding must not cost a step. */
    @Test
    void roundingCostsNoStep() {
        Lever tenths = new Lever("x", "", 0, 0.3, 0.1, Widening.HIGHER);
        assertThat(tenths.stepsDown(0.3)).isEqualTo(3);
        assertThat(tenths.stepsUp(0.1)).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({
        "13, 1, 13.5",
        "13, 2, 14",
        "13, 5, 14",
        "11, -1, 10.5",
        "11, -2, 10",
        "11, -5, 10",
        "12, 0, 12",
        "13.8, 1, 13.8"
    })
    void movesStopAtTheEndStops(double setting, int steps, double expected) {
        assertThat(LEVER.moved(setting, steps)).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"9.99, false", "9.9999999, true", "10, true", "14, true", "14.0000001, true", "14.01, false"})
    void reachesItsEndStops(double setting, boolean reached) {
        assertThat(LEVER.reaches(setting)).isEqualTo(reached);
    }

    @ParameterizedTest
    @CsvSource({"HIGHER, 1", "LOWER, -1", "UNKNOWN, 0", "UNANSWERED, 0"})
    void signOfOneStepUp(Widening widening, int sign) {
        assertThat(new Lever("x", "", 1, 2, 1, widening).widerSign()).isEqualTo(sign);
    }

    @ParameterizedTest
    @CsvSource({"5, 5, 1", "6, 5, 1", "1, 2, 0", "1, 2, -1", "1, NaN, 1", "1, 2, NaN"})
    void refusesTheImpossible(double lowest, double highest, double step) {
        assertThatThrownBy(() -> new Lever("tilt", "°", lowest, highest, step, Widening.HIGHER))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tilt");
    }
}
