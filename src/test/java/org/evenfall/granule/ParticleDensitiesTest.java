package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParticleDensitiesTest {

    private static ParticleDensity of(double bulk, ProductForm form) {
        return ParticleDensities.fromBulk(BulkDensities.of(List.of(bulk, bulk, bulk), 1, 0), form);
    }

    /**
     * Source: UNIDO/IFDC Fertilizer Manual, second hand: granular urea 1 220–1 300 kg/m³, prilled 1 300–1 320; the middles are
     * 1 260 and 1 310. With 1 750 of ours: 0.50 to 0.66 is 0.63 to 0.8316, 0.655 to 0.8646, 0.875 to 1.155 kg/L.
     */
    @ParameterizedTest
    @CsvSource({
        "0.629, GRANULAR_UREA, false",
        "0.631, GRANULAR_UREA, true",
        "0.8315, GRANULAR_UREA, true",
        "0.8317, GRANULAR_UREA, false",
        "0.654, PRILLED_UREA, false",
        "0.656, PRILLED_UREA, true",
        "0.8645, PRILLED_UREA, true",
        "0.8647, PRILLED_UREA, false",
        "0.874, CALCIUM_AMMONIUM_NITRATE, false",
        "0.876, CALCIUM_AMMONIUM_NITRATE, true",
        "1.154, CALCIUM_AMMONIUM_NITRATE, true",
        "1.156, CALCIUM_AMMONIUM_NITRATE, false",
        "0.2, OTHER, true",
        "2.0, AMMONIUM_NITRATE, true",
        "2.0, UNANSWERED, true"
    })
    void aPackingFromHalfToTwoThirdsIsPlausible(double bulk, ProductForm form, boolean plausible) {
        assertThat(of(bulk, form).plausible()).isEqualTo(plausible);
    }

    /**
     * Bulk density over 0.59 for urea, over 0.56 for all others; urea at most 1 335 kg/m³, reached at 0.78765 kg/L. Source:
     * ECHA dossier 2009, CAMEO after CRC: solid urea 1 330–1 335 kg/m³.
     */
    @ParameterizedTest
    @CsvSource({
        "0.75, GRANULAR_UREA, 1271.1864",
        "0.72, PRILLED_UREA, 1220.3390",
        "0.7876, GRANULAR_UREA, 1334.9153",
        "0.7877, GRANULAR_UREA, 1335",
        "0.7877, PRILLED_UREA, 1335",
        "0.84, GRANULAR_UREA, 1335",
        "1.0, CALCIUM_AMMONIUM_NITRATE, 1785.7143",
        "1.0, AMMONIUM_NITRATE, 1785.7143",
        "0.75, OTHER, 1339.2857",
        "0.75, UNANSWERED, 1339.2857"
    })
    void theGranuleIsNeverDenserThanTheSolid(double bulk, ProductForm form, double kgPerM3) {
        ParticleDensity particle = of(bulk, form);
        assertThat(particle.kgPerM3()).isCloseTo(kgPerM3, within(1e-4));
        assertThat(ParticleDensities.kgPerM3(bulk, form)).isCloseTo(particle.kgPerM3(), within(1e-9));
        assertThat(particle.uncappedKgPerM3()).isGreaterThanOrEqualTo(particle.kgPerM3());
        assertThat(particle.uncappedKgPerM3() > particle.kgPerM3()).isEqualTo(kgPerM3 == 1335);
    }

    /** Above the solid by more than its error: bulk / 0.59 × (1 − 0.03 / 0.59) above 1 335, so above 0.82985 kg/L. */
    @ParameterizedTest
    @CsvSource({
        "0.7877, GRANULAR_UREA, false",
        "0.8298, GRANULAR_UREA, false",
        "0.8299, GRANULAR_UREA, true",
        "0.8298, PRILLED_UREA, false",
        "0.8299, PRILLED_UREA, true",
        "1.2, CALCIUM_AMMONIUM_NITRATE, false",
        "1.2, UNANSWERED, false"
    })
    void denserThanTheSolidByMoreThanItsError(double bulk, ProductForm form, boolean denser) {
        assertThat(of(bulk, form).denserThanSolid()).isEqualTo(denser);
    }

    @Test
    void packingIsBulkOverTheApparentDensityElseTheAssumedOne() {
        assertThat(of(0.74, ProductForm.GRANULAR_UREA).packingShare()).isCloseTo(740 / 1260.0, within(1e-12));
        assertThat(of(0.74, ProductForm.PRILLED_UREA).packingShare()).isCloseTo(740 / 1310.0, within(1e-12));
        assertThat(of(1.0, ProductForm.CALCIUM_AMMONIUM_NITRATE).packingShare())
                .isCloseTo(1000 / 1750.0, within(1e-12));
        assertThat(of(1.0, ProductForm.OTHER).packingShare()).isEqualTo(0.56);
    }

    /** Relative errors in quadrature: 1 % of one filling, 0.03/0.59 or 0.04/0.56 of the packing. */
    @ParameterizedTest
    @CsvSource({"GRANULAR_UREA, 0.03, 0.59", "PRILLED_UREA, 0.03, 0.59", "OTHER, 0.04, 0.56"})
    void theErrorIsThatOfBulkDensityAndPacking(ProductForm form, double error, double share) {
        ParticleDensity particle = ParticleDensities.fromBulk(BulkDensities.of(List.of(0.75), 1, 0), form);
        assertThat(particle.standardErrorKgPerM3())
                .isCloseTo(particle.kgPerM3() * Math.hypot(0.01, error / share), within(1e-9));
    }

    /** Source: Berryman 1983 (abstract): random close packing of equal spheres 0.64. */
    @ParameterizedTest
    @CsvSource({"0, 0.03", "-0.1, 0.03", "0.6401, 0.03", "0.59, -0.01", "NaN, 0.03", "0.59, NaN"})
    void refusesAPackingOutsideItsRange(double share, double error) {
        assertThatThrownBy(() -> new Packing(share, error))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("share must be above 0 and at most 0.64, standardError at least 0");
    }

    @Test
    void takesAPackingAtItsLimits() {
        assertThat(new Packing(0.64, 0).relativeError()).isZero();
        assertThat(new Packing(0.5, 0.05).relativeError()).isCloseTo(0.1, within(1e-12));
    }
}
