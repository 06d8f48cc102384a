package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PearsonIiiTest {

    /**
     * Chi-squared with ν degrees of freedom has the cumulants ν, 2ν, 8ν. Source: NIST/SEMATECH e-Handbook of Statistical
     * Methods, 1.3.6.7.4, upper critical values of the chi-square distribution.
     */
    @ParameterizedTest
    @CsvSource({"1, 3.841, 0.95", "3, 7.815, 0.95", "10, 18.307, 0.95", "10, 3.940, 0.05", "30, 43.773, 0.95"})
    void chiSquaredIsOne(double freedom, double value, double probability) {
        assertThat(PearsonIii.of(freedom, 2 * freedom, 8 * freedom).probabilityAtMost(value))
                .isCloseTo(probability, within(1e-4));
        assertThat(PearsonIii.of(freedom + 5, 2 * freedom, 8 * freedom).probabilityAtMost(value + 5))
                .isCloseTo(probability, within(1e-4));
    }

    /** Standard normal quantiles. */
    @Test
    void withoutSkewnessItIsNormal() {
        for (double third : new double[] {0, -3}) {
            PearsonIii normal = PearsonIii.of(4, 0.25, third);
            assertThat(normal.probabilityAtMost(4)).isCloseTo(0.5, within(2e-4));
            assertThat(normal.probabilityAtMost(4 + 1.644854 * 0.5)).isCloseTo(0.95, within(2e-4));
            assertThat(normal.probabilityAtMost(4 - 1.644854 * 0.5)).isCloseTo(0.05, within(2e-4));
        }
    }

    @Test
    void nothingIsBelowItsStart() {
        assertThat(PearsonIii.of(3, 6, 24).probabilityAtMost(-1e-9)).isZero();
        assertThat(PearsonIii.of(3, 6, 24).probabilityAtMost(1e-3)).isPositive();
    }
}
