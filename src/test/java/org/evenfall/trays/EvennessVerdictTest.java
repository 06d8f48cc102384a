package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verdict follows from the chance of at most 15 %, and from a median above 20 %. */
class EvennessVerdictTest {

    @ParameterizedTest
    @CsvSource({
        "8, 1, EVEN",
        "12, 0.9, EVEN",
        "12, 0.8999, PROBABLY_EVEN",
        "14, 0.5, PROBABLY_EVEN",
        "15.1, 0.4999, NOT_EVEN_ENOUGH",
        "20, 0, NOT_EVEN_ENOUGH",
        "20.001, 0, DO_NOT_SPREAD",
        "20.001, 0.95, DO_NOT_SPREAD",
        "0, 1, EVEN"
    })
    void theVerdict(double medianPercent, double chance, EvennessVerdict verdict) {
        assertThat(EvennessVerdict.of(medianPercent, chance)).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"10, 0.9, true", "10.001, 0.95, false", "9, 0.89, false", "3, 1, true"})
    void goodIsOnlyAWord(double medianPercent, double chance, boolean good) {
        assertThat(new FieldCv(medianPercent, new Interval(0, 40), chance).good())
                .isEqualTo(good);
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0.5", "NaN, 0.5", "10, -0.1", "10, 1.1", "10, NaN"})
    void whatIsNoEstimateIsRefused(double medianPercent, double chance) {
        assertThatThrownBy(() -> EvennessVerdict.of(medianPercent, chance))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theLimitsArePublished() {
        assertThat(CvLimits.GOOD_PERCENT).isEqualTo(10);
        assertThat(CvLimits.FIELD_PERCENT).isEqualTo(15);
        assertThat(CvLimits.STRIPES_PERCENT).isEqualTo(20);
    }
}
