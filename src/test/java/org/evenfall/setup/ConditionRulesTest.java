package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.Tramlines;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a condition may change: at, below and above each limit. */
class ConditionRulesTest {

    private static Tramlines tramlines(double widthM, DrivingPattern pattern) {
        return new Tramlines(widthM, pattern);
    }

    /** 91.86 ft are 27.999 m. */
    @ParameterizedTest
    @CsvSource({"28, true", "27.999, true", "28.1, true", "27.9, true", "28.11, false", "27.89, false", "36, false"})
    void width(double widthM, boolean same) {
        assertThat(ConditionRules.sameWidth(
                        tramlines(28, DrivingPattern.BACK_AND_FORTH), tramlines(widthM, DrivingPattern.BACK_AND_FORTH)))
                .isEqualTo(same);
    }

    @ParameterizedTest
    @CsvSource({
        "BACK_AND_FORTH, BACK_AND_FORTH, true",
        "UNANSWERED, BACK_AND_FORTH, true",
        "ROUND_AND_ROUND, ROUND_AND_ROUND, true",
        "ROUND_AND_ROUND, UNANSWERED, false",
        "BACK_AND_FORTH, ROUND_AND_ROUND, false"
    })
    void driving(DrivingPattern one, DrivingPattern other, boolean same) {
        assertThat(ConditionRules.sameDriving(tramlines(24, one), tramlines(24, other)))
                .isEqualTo(same);
        assertThat(ConditionRules.sameTramlines(tramlines(24, one), tramlines(24.05, other)))
                .isEqualTo(same);
        assertThat(ConditionRules.sameTramlines(tramlines(24, one), tramlines(25, other)))
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "S-1042, ' s-1042 ', true",
        "S 1042, S  1042, true",
        "S-1042, S-1043, false",
        "'', '', true",
        "'', S, false"
    })
    void names(String one, String other, boolean same) {
        assertThat(ConditionRules.sameName(one, other)).isEqualTo(same);
    }

    @ParameterizedTest
    @CsvSource({"162, 180, true", "161.9, 180, false", "198, 180, true", "198.1, 180, false", ", 180, true", "5, , true"
    })
    void rateAndSpeedWithinTenPerCent(Double then, Double now, boolean same) {
        assertThat(ConditionRules.withinPercent(then, now, ConditionRules.RATE_PERCENT))
                .isEqualTo(same);
        assertThat(ConditionRules.withinPercent(then, now, ConditionRules.SPEED_PERCENT))
                .isEqualTo(same);
    }

    /** 3 % of 540 are 16.2 rpm. */
    @ParameterizedTest
    @CsvSource({"523.8, true", "523.7, false", "556.2, true", "556.3, false", ", true"})
    void ptoSpeedWithinThreePerCent(Double then, boolean same) {
        assertThat(ConditionRules.samePto(then, 540.0)).isEqualTo(same);
    }

    @ParameterizedTest
    @CsvSource({"0.65, true", "0.64, false", "0.85, true", "0.86, false", ", true"})
    void heightWithinTenCentimetres(Double thenM, boolean same) {
        assertThat(ConditionRules.sameHeight(thenM, 0.75)).isEqualTo(same);
    }
}
