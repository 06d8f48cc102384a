package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a tray test adds to its strip. */
class StripLoadTest {

    private static final Offset<Double> TINY = within(1e-9);

    /** By hand: three passes of 36 m over 100 m are 1.08 ha; at 150 kg/ha and three runs 486 kg. */
    @Test
    void theProductOfATest() {
        StripLoad load = StripLoad.of(150, null, 3, 36);
        assertThat(load.productUsedKg()).isCloseTo(486, TINY);
        assertThat(load.productPerRunKgPerHa()).isEqualTo(150);
        assertThat(load.lengthM()).isEqualTo(100);
        assertThat(load.nitrogenPerRunKgPerHa()).isNull();
        assertThat(load.nitrogenKgPerHa()).isNull();
    }

    /** By hand: 150 kg/ha of urea (46 % N) are 69 kg/ha of nitrogen a run; three tests of three runs make 621. */
    @Test
    void theNitrogenOfThreeTests() {
        StripLoad load = StripLoad.of(150, 69.0, 3, 28);
        assertThat(load.runs()).isEqualTo(3);
        assertThat(load.nitrogenPerRunKgPerHa()).isEqualTo(69);
        assertThat(3 * load.nitrogenKgPerHa()).isCloseTo(621, TINY);
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1, 1", "1, 0, 1, 1", "1, 1, 0, 1", "1, 1, 1, 0", "NaN, 1, 1, 1", "1, NaN, 1, 1", "1, 1, 1, NaN"})
    void outOfRangeIsRefused(double product, double nitrogen, int runs, double width) {
        assertThatThrownBy(() -> StripLoad.of(product, nitrogen, runs, width))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
