package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalTest {

    @Test
    void widthIsHighLessLow() {
        assertThat(new Interval(-1, 2.5).width()).isEqualTo(3.5);
        assertThat(new Interval(2, 2).width()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"-1.001, false", "-1, true", "-0.999, true", "2.499, true", "2.5, true", "2.501, false", "NaN, false"})
    void bothEndsBelongToIt(double value, boolean inside) {
        assertThat(new Interval(-1, 2.5).contains(value)).isEqualTo(inside);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.999", "NaN, 1", "0, NaN", "-Infinity, 0", "0, Infinity"})
    void refusesEndsThatAreNoneOrInDisorder(double low, double high) {
        assertThatThrownBy(() -> new Interval(low, high))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("low");
    }

    @Test
    void fivePercentLieAboveAndFiveBelowTheNinetyPercentInterval() {
        var normal = new org.hipparchus.distribution.continuous.NormalDistribution(3, 2);
        Interval interval = NinetyPercent.of(3, 2);
        assertThat(normal.cumulativeProbability(interval.low())).isCloseTo(0.05, within(1e-5));
        assertThat(normal.cumulativeProbability(interval.high())).isCloseTo(0.95, within(1e-5));
        assertThatThrownBy(() -> NinetyPercent.of(0, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
