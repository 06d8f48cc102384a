package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DensitiesTest {

    @Test
    void threeFillings() {
        BulkDensity density = BulkDensities.of(List.of(1.50, 1.52, 1.54), 2, 0);
        assertThat(density.meanKgPerL()).isCloseTo(0.76, within(1e-12));
        assertThat(density.sdKgPerL()).isCloseTo(0.01, within(1e-12));
        assertThat(density.standardErrorKgPerL()).isCloseTo(0.01 / Math.sqrt(3), within(1e-12));
        assertThat(density.spreadPercent()).isCloseTo(100 * 0.02 / 0.76, within(1e-9));
        assertThat(density.fillings()).isEqualTo(3);
        assertThat(density.anotherFillingAdvised()).isFalse();
    }

    @Test
    void anotherFillingAtFewerThanThreeOrMoreThanThreePercent() {
        assertThat(BulkDensities.of(List.of(0.75, 0.75), 1, 0).anotherFillingAdvised())
                .isTrue();
        assertThat(BulkDensities.of(List.of(0.750, 0.761, 0.772), 1, 0).anotherFillingAdvised())
                .isFalse();
        assertThat(BulkDensities.of(List.of(0.750, 0.761, 0.774), 1, 0).anotherFillingAdvised())
                .isTrue();
    }

    @Test
    void aCoarseScaleTellsLess() {
        List<Double> same = List.of(0.75, 0.75, 0.75);
        assertThat(BulkDensities.of(same, 1, 0).standardErrorKgPerL()).isZero();
        // step 10 g: error of one reading 2.89 g; three full readings averaged and one empty
        assertThat(BulkDensities.of(same, 1, 0.01).standardErrorKgPerL())
                .isCloseTo(0.01 / Math.sqrt(12) * Math.sqrt(1.0 / 3 + 1), within(1e-12));
        assertThat(BulkDensities.of(List.of(0.75), 1, 0).standardErrorKgPerL()).isCloseTo(0.0075, within(1e-12));
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> BulkDensities.of(List.of(), 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7), 0, 0)).hasMessageContaining("volumeL");
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7, -0.1), 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BulkDensities.of(List.of(0.7), 1, Double.NaN)).hasMessageContaining("scaleStepKg");
    }

    @ParameterizedTest
    @CsvSource({
        "0.74, GRANULAR_UREA, true",
        "0.65, GRANULAR_UREA, false",
        "0.88, GRANULAR_UREA, false",
        "1.00, CALCIUM_AMMONIUM_NITRATE, true",
        "0.75, CALCIUM_AMMONIUM_NITRATE, false",
        "0.95, OTHER, true"
    })
    void bulkOverParticleDensityIsPlausibleFromHalfToTwoThirds(double bulk, ProductForm form, boolean plausible) {
        ParticleDensity particle = ParticleDensities.fromBulk(BulkDensities.of(List.of(bulk, bulk, bulk), 1, 0), form);
        assertThat(particle.plausible()).isEqualTo(plausible);
        assertThat(particle.kgPerM3()).isCloseTo(1000 * bulk / 0.56, within(1e-9));
        assertThat(particle.standardErrorKgPerM3()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "3, 3", "4, 4", "10, 4", "16, 4", "17, 5", "100, 10", "101, 11"})
    void bagsToSample(int delivered, int sampled) {
        assertThat(Sampling.bags(delivered)).isEqualTo(sampled);
    }

    /** Beverloo's form: flow goes with density, and falls as granules grow, most in a small opening. */
    @Test
    void flowScaling() {
        double flow = FlowScaling.kgPerMin(0.75, 50, 3, 9.81);
        assertThat(FlowScaling.kgPerMin(1.5, 50, 3, 9.81)).isCloseTo(2 * flow, within(1e-9));
        assertThat(FlowScaling.kgPerMin(0.75, 50, 4, 9.81)).isLessThan(flow);
        assertThatThrownBy(() -> FlowScaling.kgPerMin(0.75, 4, 3, 9.81)).isInstanceOf(IllegalArgumentException.class);
    }
}
