package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParticleDensitiesTest {

    private static ParticleDensity of(double bulk, ProductForm form) {
        return ParticleDensities.fromBulk(BulkDensities.of(List.of(bulk, bulk, bulk), 1, 0), form);
    }

    /** 1 325 and 1 850 kg/m³ a granule: a packing of 0.50 to 0.66 is 0.6625 to 0.8745 and 0.925 to 1.221 kg/L. */
    @ParameterizedTest
    @CsvSource({
        "0.662, GRANULAR_UREA, false",
        "0.663, GRANULAR_UREA, true",
        "0.874, PRILLED_UREA, true",
        "0.875, PRILLED_UREA, false",
        "0.924, CALCIUM_AMMONIUM_NITRATE, false",
        "0.926, CALCIUM_AMMONIUM_NITRATE, true",
        "1.220, CALCIUM_AMMONIUM_NITRATE, true",
        "1.222, CALCIUM_AMMONIUM_NITRATE, false",
        "0.2, OTHER, true",
        "2.0, AMMONIUM_NITRATE, true",
        "2.0, UNANSWERED, true"
    })
    void aPackingFromHalfToTwoThirdsIsPlausible(double bulk, ProductForm form, boolean plausible) {
        ParticleDensity particle = of(bulk, form);
        assertThat(particle.plausible()).isEqualTo(plausible);
        assertThat(particle.kgPerM3()).isCloseTo(1000 * bulk / 0.56, within(1e-9));
    }

    @Test
    void packingIsBulkOverThePublishedDensityElseTheUsualOne() {
        assertThat(of(0.74, ProductForm.GRANULAR_UREA).packingShare()).isCloseTo(740 / 1325.0, within(1e-12));
        assertThat(of(1.0, ProductForm.CALCIUM_AMMONIUM_NITRATE).packingShare())
                .isCloseTo(1000 / 1850.0, within(1e-12));
        assertThat(of(1.0, ProductForm.OTHER).packingShare()).isEqualTo(0.56);
    }

    /** Relative errors in quadrature: 1 % of one filling, 0.02/0.56 of the packing. */
    @Test
    void theErrorIsThatOfBulkDensityAndPacking() {
        ParticleDensity particle =
                ParticleDensities.fromBulk(BulkDensities.of(List.of(0.75), 1, 0), ProductForm.GRANULAR_UREA);
        assertThat(particle.standardErrorKgPerM3())
                .isCloseTo(particle.kgPerM3() * Math.hypot(0.01, 0.02 / 0.56), within(1e-9));
    }
}
