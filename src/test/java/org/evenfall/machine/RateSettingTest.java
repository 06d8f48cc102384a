package org.evenfall.machine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateSettingTest {

    @ParameterizedTest
    @CsvSource({"UNANSWERED, false", "OPENING, false", "FACTOR, true", "WEIGHING, true"})
    void whatThePersonSets(RateSetting setting, boolean factor) {
        assertThat(setting.byFactor()).isEqualTo(factor);
    }

    /** An opening with one decimal at most, a factor with three, and no zeros at the end. */
    @ParameterizedTest
    @CsvSource({
        "OPENING, 27, 0",
        "OPENING, 27.04, 0",
        "OPENING, 27.06, 1",
        "OPENING, 27.5, 1",
        "UNANSWERED, 27.123, 1",
        "UNANSWERED, 26.96, 0",
        "FACTOR, 1, 0",
        "FACTOR, 1.0004, 0",
        "FACTOR, 0.9, 1",
        "FACTOR, 0.91, 2",
        "FACTOR, 1.0989, 3",
        "FACTOR, 1.0006, 3",
        "WEIGHING, 1.2004, 1",
        "WEIGHING, 0.3333333, 3"
    })
    void decimalsOfAValue(RateSetting setting, double value, int decimals) {
        assertThat(setting.decimals(value)).isEqualTo(decimals);
    }
}
