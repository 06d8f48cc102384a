package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalTest {

    @ParameterizedTest
    @CsvSource({"1.99, false", "2, true", "3, true", "5, true", "5.01, false", "NaN, false"})
    void bothEndsBelongToIt(double value, boolean inside) {
        assertThat(new Interval(2, 5).contains(value)).isEqualTo(inside);
        assertThat(new Interval(2, 5).width()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"2, 1.99", "NaN, 1", "1, NaN", "-Infinity, 1", "1, Infinity"})
    void theEndsAreFiniteAndInOrder(double low, double high) {
        assertThatThrownBy(() -> new Interval(low, high)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPointIsAnInterval() {
        assertThat(new Interval(2, 2).width()).isZero();
    }
}
