package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvennessVerdictTest {

    @ParameterizedTest
    @CsvSource({
        "3, 1, EVEN",
        "14, 0.9001, EVEN",
        "14, 0.90, EVEN",
        "14, 0.8999, PROBABLY_EVEN",
        "14, 0.5001, PROBABLY_EVEN",
        "14, 0.50, PROBABLY_EVEN",
        "14, 0.4999, NOT_EVEN_ENOUGH",
        "19.99, 0, NOT_EVEN_ENOUGH",
        "20, 0, NOT_EVEN_ENOUGH",
        "20.01, 0, DO_NOT_SPREAD",
        "20.01, 0.95, DO_NOT_SPREAD",
        "20, 0.95, EVEN"
    })
    void theChanceDecidesUnlessTheMedianIsAboveTwenty(double median, double chance, EvennessVerdict verdict) {
        assertThat(EvennessVerdict.of(median, chance)).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"-0.001, 0.5", "NaN, 0.5", "10, -0.001", "10, 1.001", "10, NaN"})
    void valuesOutOfRangeAreRefused(double median, double chance) {
        assertThatThrownBy(() -> EvennessVerdict.of(median, chance)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Source: Defra RB209; a national certification scheme, 15 % for nitrogen. 10 and 20 % are ours, after the farm press. */
    @Test
    void theLimitsAreThePublishedOnes() {
        assertThat(CvLimits.GOOD_PERCENT).isEqualTo(10);
        assertThat(CvLimits.FIELD_PERCENT).isEqualTo(15);
        assertThat(CvLimits.STRIPES_PERCENT).isEqualTo(20);
    }
}
