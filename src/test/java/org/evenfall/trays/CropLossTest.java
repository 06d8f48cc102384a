package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CropLossTest {

    /** Source: 0.25 t/ha between 30 and 10 % CV (Irish press 2019), 20 kg/ha at 20 % (UK Fertiliser Society review). */
    @Test
    void theLossIsARangeThatGrowsWithTheSquare() {
        CropLoss twenty = CropLoss.of(20);
        assertThat(twenty.lowKgPerHa()).isCloseTo(20, within(1e-9));
        assertThat(CropLoss.of(30).highKgPerHa() - CropLoss.of(10).highKgPerHa())
                .isCloseTo(250, within(1e-9));
        assertThat(CropLoss.of(10).lowKgPerHa()).isCloseTo(5, within(1e-9));
        assertThat(CropLoss.of(0).highKgPerHa()).isZero();
        assertThatThrownBy(() -> CropLoss.of(-0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
