package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mass and volume of this product for the same nitrogen as from the product before. */
class AgainstOtherTest {

    /** Exact by definition: 27 / 46 of the mass; times 1.0 / 0.7572 of the volume. */
    @Test
    void ureaAgainstAProductWithTwentySevenPercent() {
        AgainstOther against = AgainstOther.of(46, 0.7572, 27, 1.0);
        assertThat(against.massShare()).isCloseTo(0.58696, within(5e-6));
        assertThat(against.volumeShare()).isCloseTo(0.7752, within(5e-5));
        assertThat(against.otherDensityKgPerL()).isEqualTo(1.0);
        assertThat(against.densityAssumed()).isFalse();
    }

    /** A typed density goes before the usual one: 34.5 / 46 = 0.75; × 0.9 / 0.75 = 0.9. */
    @Test
    void aMeasuredDensityCounts() {
        AgainstOther against = AgainstOther.of(46, 0.75, 34.5, 0.9);
        assertThat(against.massShare()).isCloseTo(0.75, within(1e-12));
        assertThat(against.volumeShare()).isCloseTo(0.9, within(1e-12));
        AgainstOther typed = AgainstOther.of(46, 0.75, 27, 1.08);
        assertThat(typed.volumeShare()).isCloseTo(27 / 46.0 * 1.08 / 0.75, within(1e-12));
        assertThat(typed.densityAssumed()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"25.9, false", "26, true", "27, true", "28, true", "28.1, false"})
    void theUsualDensityIsThatOfAboutTwentySevenPercent(double otherPercent, boolean assumed) {
        AgainstOther against = AgainstOther.of(46, 0.76, otherPercent, null);
        assertThat(against.densityAssumed()).isEqualTo(assumed);
        assertThat(against.massShare()).isCloseTo(otherPercent / 46, within(1e-12));
        if (assumed) {
            assertThat(against.otherDensityKgPerL()).isEqualTo(1.0);
            assertThat(against.volumeShare()).isCloseTo(otherPercent / 46 / 0.76, within(1e-12));
        } else {
            assertThat(against.otherDensityKgPerL()).isNull();
            assertThat(against.volumeShare()).isNull();
        }
    }

    @Test
    void withoutTheOwnDensityThereIsNoVolume() {
        AgainstOther against = AgainstOther.of(46, null, 27, null);
        assertThat(against.massShare()).isCloseTo(0.58696, within(5e-6));
        assertThat(against.volumeShare()).isNull();
    }

    @Test
    void onlyNumbersAboveNought() {
        assertThatThrownBy(() -> AgainstOther.of(0, 0.75, 27, 1.0)).hasMessageContaining("nitrogenPercent");
        assertThatThrownBy(() -> AgainstOther.of(46, 0.0, 27, 1.0)).hasMessageContaining("densityKgPerL");
        assertThatThrownBy(() -> AgainstOther.of(46, 0.75, -1, 1.0)).hasMessageContaining("otherPercent");
        assertThatThrownBy(() -> AgainstOther.of(46, 0.75, 27, Double.NaN)).hasMessageContaining("otherKgPerL");
    }
}
