package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import org.evenfall.setup.DeliveryCheck.Answer;
import org.evenfall.trays.Tramlines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Another delivery against the tested one. Now 0.75 kg/L ± 0.001 and 3.2 mm, 90 % interval 3.1 to 3.3: standard error of the
 * logarithm ln(3.3 / 3.1) / 3.2898 = 0.01900, limit 2 √2 × 0.01900 = 5.375 %. The density's limit is 1 %, 0.0075 kg/L, which is
 * more than 2 √2 × 0.001 = 0.0028.
 */
class DeliveryCheckTest {

    private static final ProductResult NOW = TypedSetup.sieved(0.75, 3.2, 1.2, 1270.0);

    private static TestConditions tested(Double kgPerL, Double medianMm) {
        Tramlines tramlines = TestResults.conditions(28).tramlines();
        return new TestConditions(tramlines, null, null, null, "urea", "A", kgPerL, medianMm, false);
    }

    @ParameterizedTest
    @CsvSource({
        "0.7426, 3.3, ALIKE",
        "0.7574, 3.3, ALIKE",
        "0.7424, 3.3, DIFFERENT",
        "0.7576, 3.3, DIFFERENT",
        "0.752, 3.37, ALIKE",
        "0.752, 3.38, DIFFERENT",
        "0.752, 3.04, ALIKE",
        "0.752, 3.03, DIFFERENT"
    })
    void alikeWithinTheErrors(double kgPerL, double medianMm, Answer answer) {
        assertThat(DeliveryCheck.of(tested(kgPerL, medianMm), NOW)).isEqualTo(answer);
    }

    /** The same number to the decimals that are kept is the same measurement, not a new one. */
    @ParameterizedTest
    @CsvSource({"0.75, 3.25", "0.75005, 3.25", "0.752, 3.2", "0.752, 3.20005", "0.75, 3.2"})
    void theNumbersOfTheTestAreNoNewMeasurement(double kgPerL, double medianMm) {
        assertThat(DeliveryCheck.of(tested(kgPerL, medianMm), NOW)).isEqualTo(Answer.NOT_MEASURED);
    }

    @Test
    void everythingMustHaveBeenMeasured() {
        assertThat(DeliveryCheck.of(tested(null, 3.25), NOW)).isEqualTo(Answer.NOT_MEASURED);
        assertThat(DeliveryCheck.of(tested(0.752, null), NOW)).isEqualTo(Answer.NOT_MEASURED);
        assertThat(DeliveryCheck.of(tested(0.752, 3.25), TypedSetup.product(0.75, 46.0)))
                .isEqualTo(Answer.NOT_MEASURED);
        assertThat(DeliveryCheck.of(tested(0.7501, 3.2001), NOW)).isEqualTo(Answer.ALIKE);
    }
}
