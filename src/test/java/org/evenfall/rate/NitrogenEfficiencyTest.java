package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares of the nitrogen of untreated urea that count when prices are compared. */
class NitrogenEfficiencyTest {

    @ParameterizedTest
    @CsvFileSource(resources = "nitrogen-efficiency.csv", numLinesToSkip = 1)
    void asPublished(NitrogenEfficiency preset, double share, double tolerance, String source) {
        assertThat(source).isNotBlank();
        assertThat(preset.percent() / 100).isCloseTo(share, within(tolerance));
    }

    @Test
    void noneCountsMoreThanAll() {
        assertThat(Arrays.stream(NitrogenEfficiency.values()).map(NitrogenEfficiency::percent))
                .allSatisfy(percent -> assertThat(percent).isBetween(80.0, 100.0));
    }

    /** Exact by definition: 420 per t at 27 % against urea at 46 %, 420 × 46 / 27 × share. */
    @ParameterizedTest
    @CsvSource({"100, 715.56", "95, 679.78", "90, 644.00", "80, 572.44"})
    void parityPriceOfUrea(double percent, double pricePerT) {
        RatePlan plan = Plans.of(new PlanInput(
                new PlanInput.Rate(150, 46),
                new PlanInput.Field(28.0, 12.0, 10.0),
                new PlanInput.Containers(null, null, null),
                null,
                new PlanInput.Outlets(2, null),
                5,
                new PlanInput.Prices(null, 420.0, 27.0, percent)));
        assertThat(plan.money().parityPricePerT()).isCloseTo(pricePerT, within(0.005));
        assertThat(plan.amounts().productKgPerHa()).as("the rate is not raised").isEqualTo(150);
    }
}
