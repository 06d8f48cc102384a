package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindLimitsTest {

    @ParameterizedTest
    @CsvSource({
        "0, CALM",
        "1.99, CALM",
        "2, CALM",
        "2.01, NOTE",
        "2.99, NOTE",
        "3, NOTE",
        "3.01, WARN",
        "3.99, WARN",
        "4, WARN",
        "4.01, STOP",
        "30, STOP"
    })
    void aWindAtALimitIsNotAboveIt(double windMPerS, WindLimits.Strength strength) {
        assertThat(WindLimits.USUAL.classify(windMPerS)).isEqualTo(strength);
    }

    /** Source: farm magazines, tests up to 8 km/h; a national certification scheme, up to 15 km/h. */
    @Test
    void warningAndEndAreBetweenThePublishedLimits() {
        assertThat(WindLimits.USUAL.warnMPerS()).isBetween(8 / 3.6, 15 / 3.6);
        assertThat(WindLimits.USUAL.stopMPerS()).isBetween(8 / 3.6, 15 / 3.6);
    }

    @Test
    void theOwnersLimitsCount() {
        WindLimits own = new WindLimits(1, 5, 8);
        assertThat(own.classify(4.5)).isEqualTo(WindLimits.Strength.NOTE);
        assertThat(own.classify(8)).isEqualTo(WindLimits.Strength.WARN);
    }

    @ParameterizedTest
    @CsvSource({"3, 2, 4", "2, 5, 4", "-0.1, 3, 4", "NaN, 3, 4", "2, NaN, 4", "2, 3, NaN"})
    void limitsMustNotFall(double note, double warn, double stop) {
        assertThatThrownBy(() -> new WindLimits(note, warn, stop)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void limitsMayBeEqual() {
        assertThat(new WindLimits(0, 0, 0).classify(0.1)).isEqualTo(WindLimits.Strength.STOP);
    }
}
