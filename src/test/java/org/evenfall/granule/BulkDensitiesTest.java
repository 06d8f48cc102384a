package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BulkDensitiesTest {

    @Test
    void threeFillings() {
        BulkDensity density = BulkDensities.of(List.of(1.50, 1.56, 1.53), 2, 0);
        assertThat(density.meanKgPerL()).isCloseTo(0.765, within(1e-12));
        assertThat(density.sdKgPerL()).isCloseTo(0.015, within(1e-12));
        assertThat(density.standardErrorKgPerL()).isCloseTo(0.015 / Math.sqrt(3), within(1e-12));
        assertThat(density.spreadPercent()).isCloseTo(100 * 0.03 / 0.765, within(1e-9));
        assertThat(density.fillings()).isEqualTo(3);
        assertThat(density.fillingsKgPerL()).containsExactly(0.75, 0.78, 0.765);
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2, true", "3, false", "4, false"})
    void anotherFillingBelowThree(int fillings, boolean another) {
        List<Double> kg = List.of(0.75, 0.751, 0.75, 0.751).subList(0, fillings);
        assertThat(BulkDensities.of(kg, 1, 0).anotherFillingAdvised()).isEqualTo(another);
    }

    /** Mean 1 kg/L: half the spread below, half above. */
    @ParameterizedTest
    @CsvSource({"2.99, false", "3.01, true"})
    void anotherFillingAboveThreePercent(double spreadPercent, boolean another) {
        List<Double> kg = List.of(1 - spreadPercent / 200, 1.0, 1 + spreadPercent / 200);
        BulkDensity density = BulkDensities.of(kg, 1, 0);
        assertThat(density.spreadPercent()).isCloseTo(spreadPercent, within(1e-9));
        assertThat(density.anotherFillingAdvised()).isEqualTo(another);
    }

    /** 1.515 and 1.47 kg round 1.5 kg: 3 % but for the last binary digit, so the limit itself is tried with 64ths. */
    @Test
    void threePercentItselfIsAllowed() {
        BulkDensity density = BulkDensities.of(List.of(98.5, 101.5, 100.0), 1, 0);
        assertThat(density.spreadPercent()).isEqualTo(3);
        assertThat(density.anotherFillingAdvised()).isFalse();
    }

    @Test
    void aCoarseScaleAddsItsReadingError() {
        List<Double> same = List.of(1.5, 1.5, 1.5);
        assertThat(BulkDensities.of(same, 2, 0).standardErrorKgPerL()).isZero();
        // step 10 g: error of one reading 2.89 g; three full readings averaged and one empty, in 2 L
        assertThat(BulkDensities.of(same, 2, 0.01).standardErrorKgPerL())
                .isCloseTo(0.005 / Math.sqrt(12) * Math.sqrt(1.0 / 3 + 1), within(1e-12));
    }

    @Test
    void oneFillingIsTakenToScatterByOnePercent() {
        BulkDensity one = BulkDensities.of(List.of(1.5), 2, 0);
        assertThat(one.sdKgPerL()).isZero();
        assertThat(one.standardErrorKgPerL()).isCloseTo(0.0075, within(1e-12));
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> BulkDensities.of(List.of(), 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7), 0, 0)).hasMessageContaining("volumeL");
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7, 0.0), 1, 0)).hasMessageContaining("netKg");
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7), 1, Double.NaN)).hasMessageContaining("scaleStepKg");
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7), 1, -0.001)).hasMessageContaining("scaleStepKg");
    }
}
