package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NutrientsTest {

    /** Source: Irish Farmers Journal 2023, no. 753190: 40 ha × 85 kg N/ha at 1.00 and 0.85 per kg N cost 3,400 and 2,890. */
    @Test
    void costOfNitrogenAsPrinted() {
        assertThat(40 * 85 * Nutrients.costPerKgN(460, 46, 100)).isCloseTo(3400, within(1e-9));
        assertThat(40 * 85 * Nutrients.costPerKgN(391, 46, 100)).isCloseTo(2890, within(1e-9));
    }

    @Test
    void nitrogenThatDoesNotCountMakesTheRestDearer() {
        assertThat(Nutrients.costPerKgN(460, 46, 80)).isCloseTo(1.25, within(1e-12));
    }

    /** Common practice: 875 per t of 46 % urea compares with about 513 per t of a 27 % product. */
    @Test
    void parityPrice() {
        assertThat(Nutrients.parityPricePerT(875, 46, 27)).isCloseTo(513, within(1.0));
    }

    /** Source: FAS Scotland, Understanding Fertiliser, 10 July 2024: kg/ha × 0.8 ≈ units/acre. NIST SP 811: 1.255 35. */
    @Test
    void unitsPerAcre() {
        assertThat(Nutrients.unitKgPerHa(UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE))
                .isCloseTo(1.25535, within(1e-5));
        assertThat(100 / Nutrients.unitKgPerHa(UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE))
                .isCloseTo(80, within(0.5));
        assertThat(Nutrients.unitKgPerHa(UnitsBasis.KG_PER_HA)).isEqualTo(1);
        assertThatThrownBy(() -> Nutrients.unitKgPerHa(UnitsBasis.UNANSWERED))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Exact: the same nitrogen as urea needs 27/46 = 58.7 % of the mass. */
    @Test
    void massComparedWithTheDenseProduct() {
        assertThat(Nutrients.productKgPerHa(100, 46) / Nutrients.productKgPerHa(100, 27))
                .isCloseTo(0.587, within(5e-4));
        assertThat(Nutrients.nitrogenKgPerHa(Nutrients.productKgPerHa(80, 46), 46))
                .isCloseTo(80, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void refusesAShareThatIsNotAboveZero(double share) {
        assertThatThrownBy(() -> Nutrients.productKgPerHa(80, share)).hasMessageContaining("share");
        assertThatThrownBy(() -> Nutrients.costPerKgN(400, 46, share)).hasMessageContaining("share");
    }
}
