package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CvEstimateTest {

    @Test
    void theProbabilitiesAreThoseOfTheLimits() {
        CvEstimate estimate = CvEstimate.of(12, 3, 7);
        CvInterval interval = new CvInterval(7);
        LimitProbabilities probabilities = estimate.probabilities();
        assertThat(probabilities.good()).isEqualTo(interval.probabilityAtMost(10, 12));
        assertThat(probabilities.acceptable()).isEqualTo(interval.probabilityAtMost(15, 12));
        assertThat(probabilities.adjust()).isEqualTo(interval.probabilityAtMost(20, 12));
        assertThat(probabilities.good()).isLessThan(probabilities.acceptable());
        assertThat(estimate.lowPercent()).isEqualTo(interval.intervalPercent(12).low());
        assertThat(estimate.highPercent())
                .isEqualTo(interval.intervalPercent(12).high());
    }

    /** 3-4-5 triangle. */
    @Test
    void noiseIsTakenOffInSquares() {
        assertThat(CvEstimate.of(5, 3, 7).machinePercent()).isCloseTo(4, within(1e-12));
        assertThat(CvEstimate.of(5, 5, 7).machinePercent()).isNull();
        assertThat(CvEstimate.of(5, 5.01, 7).machinePercent()).isNull();
        assertThat(CvEstimate.of(5, 4.99, 7).machinePercent()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0", "0, -0.1", "NaN, 0", "0, NaN"})
    void negativeFiguresAreRefused(double percent, double noise) {
        assertThatThrownBy(() -> new CvEstimate(percent, noise, new Interval(0, 0), new LimitProbabilities(0, 0, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0, 0", "0.2, 0.1, 1", "0, 0.3, 0.2", "0, 0, 1.1", "NaN, 0, 0"})
    void probabilitiesRise(double good, double acceptable, double adjust) {
        assertThatThrownBy(() -> new LimitProbabilities(good, acceptable, adjust))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new LimitProbabilities(0, 0, 1).adjust()).isEqualTo(1);
    }
}
