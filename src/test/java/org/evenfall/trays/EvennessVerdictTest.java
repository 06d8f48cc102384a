package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EvennessVerdictTest {

    @ParameterizedTest
    @CsvSource({
        "0, GOOD",
        "9.99, GOOD",
        "10, GOOD",
        "10.01, ACCEPTABLE",
        "14.99, ACCEPTABLE",
        "15, ACCEPTABLE",
        "15.01, ADJUST",
        "19.99, ADJUST",
        "20, ADJUST",
        "20.01, DO_NOT_SPREAD",
        "500, DO_NOT_SPREAD"
    })
    void aCvAtItsLimitStillHasTheVerdict(double cvPercent, EvennessVerdict verdict) {
        assertThat(EvennessVerdict.of(cvPercent)).isEqualTo(verdict);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, Double.NaN})
    void whatIsNoCvHasNoVerdict(double cvPercent) {
        assertThatThrownBy(() -> EvennessVerdict.of(cvPercent)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theLimitsAreThoseOfTheSources() {
        assertThat(EvennessVerdict.GOOD.limitPercent()).isEqualTo(10);
        assertThat(EvennessVerdict.ACCEPTABLE.limitPercent()).isEqualTo(15);
        assertThat(EvennessVerdict.ADJUST.limitPercent()).isEqualTo(20);
        assertThat(EvennessVerdict.DO_NOT_SPREAD.limitPercent()).isInfinite();
    }
}
