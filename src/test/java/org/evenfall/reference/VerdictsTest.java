package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictsTest {

    @ParameterizedTest
    @CsvSource({
        // same width, complete, throw %, farthest end %, flow %, spread points, verdict
        "true, true, 1.5, 8.0, 10, 6, HOLD",
        "true, true, -1.5, 8.0, -10, -6, HOLD",
        "true, true, 1.6, 6.6, 0, 0, HOLD_AS_START",
        "true, true, 1.5, 8.1, 0, 0, HOLD_AS_START",
        "true, true, 0.0, 8.0, 0, 0, HOLD",
        "true, true, 0.0, 8.1, 0, 0, HOLD_AS_START",
        "true, true, 0.0, 5.0, 10.1, 0, HOLD_AS_START",
        "true, true, 0.0, 5.0, -10.1, 0, HOLD_AS_START",
        "true, true, 0.0, 5.0, 0, 6.1, HOLD_AS_START",
        "true, true, 0.0, 5.0, 0, -6.1, HOLD_AS_START",
        "true, true, 9.9, 19.9, 0, 0, HOLD_AS_START",
        "true, true, 0.0, 20.0, 0, 0, HOLD_AS_START",
        "true, true, 0.0, 20.1, 0, 0, FIRST_GUESS_ONLY",
        "true, false, 0.0, 5.0, 0, 0, HOLD_AS_START",
        "true, true, -10.0, 20.0, 0, 0, HOLD_AS_START",
        "true, true, -10.1, 15.1, 0, 0, FIRST_GUESS_ONLY",
        "true, true, 5.0, 20.1, 0, 0, FIRST_GUESS_ONLY",
        "false, true, 0.0, 1.0, 0, 0, FIRST_GUESS_ONLY"
    })
    void rules(
            boolean sameWidth,
            boolean complete,
            double throwPercent,
            double farthest,
            double flow,
            double spread,
            Verdict verdict) {
        assertThat(Verdicts.of(sameWidth, complete, throwPercent, farthest, flow, spread))
                .isEqualTo(verdict);
    }

    @Test
    void directions() {
        assertThat(Verdicts.direction(-1.6)).isEqualTo(Direction.WIDER);
        assertThat(Verdicts.direction(1.6)).isEqualTo(Direction.NARROWER);
        assertThat(Verdicts.direction(-1.5)).isEqualTo(Direction.AS_IT_IS);
        assertThat(Verdicts.direction(1.5)).isEqualTo(Direction.AS_IT_IS);
        assertThat(Verdicts.direction(0)).isEqualTo(Direction.AS_IT_IS);
    }

    @Test
    void sameWidthIsWithinOnePercent() {
        assertThat(Verdicts.sameWidth(28.28, 28)).isTrue();
        assertThat(Verdicts.sameWidth(28.3, 28)).isFalse();
        assertThat(Verdicts.sameWidth(27.72, 28)).isTrue();
        assertThat(Verdicts.sameWidth(27.71, 28)).isFalse();
    }
}
