package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HopperCheckTest {

    /** 1 680 kg on 8 ha are 210 kg/ha: 5 % more than 200, 4 % less than 218.75. */
    @Test
    void tooMuchIsPositiveAndTooLittleNegative() {
        HopperCheck much = HopperCheck.of(1680, 8, 200);
        assertThat(much.kgPerHa()).isCloseTo(210, within(1e-9));
        assertThat(much.deviationPercent()).isCloseTo(5, within(1e-9));
        assertThat(HopperCheck.of(1680, 8, 218.75).deviationPercent()).isCloseTo(-4, within(1e-9));
        assertThat(HopperCheck.of(0, 8, 200).deviationPercent()).isCloseTo(-100, within(1e-9));
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> HopperCheck.of(-1, 8, 200)).hasMessageContaining("usedKg");
        assertThatThrownBy(() -> HopperCheck.of(100, 0, 200)).hasMessageContaining("areaHa");
        assertThatThrownBy(() -> HopperCheck.of(100, 8, 0)).hasMessageContaining("wantedKgPerHa");
    }
}
