package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonTest {

    /** Urea of 0.75 kg/L ± 2.67 % and 3.2 mm. */
    private static final Comparisons UREA = Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD);

    private static Comparison with(ProductForm form, @Nullable Double kgPerL, @Nullable SizeDistribution sizes) {
        return UREA.with(List.of(new TestedProduct("a", "a", form, 28, kgPerL, sizes)))
                .get(0);
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void differencesAreProductLessReference() {
        Comparison found = with(ProductForm.GRANULAR_UREA, 0.80, new SizeDistribution(3.5, 1.25, 0.015, 0.01, false));
        assertThat(found.throwM())
                .isCloseTo(
                        found.productThrow.edge().metres()
                                - found.otherThrow.edge().metres(),
                        within(1e-12))
                .isNegative();
        assertThat(found.throwPercent())
                .isCloseTo(100 * found.throwM() / found.otherThrow.edge().metres(), within(1e-12));
        assertThat(found.lnFlow())
                .isCloseTo(Math.log(found.product.flowKgPerMin() / found.other.flowKgPerMin()), within(1e-12));
        assertThat(found.spreadPoints())
                .isCloseTo(found.product.spreadIndexPercent() - found.other.spreadIndexPercent(), within(1e-12));
    }

    /** A gap is filled from the other product of its form, with the error of two products; so it gives no direction. */
    @Test
    void aGapInTheDataGivesNoDirection() {
        Comparison unsieved = with(ProductForm.GRANULAR_UREA, 0.75, null);
        assertThat(unsieved.throwM()).isCloseTo(0, within(1e-12));
        assertThat(unsieved.other.d50Error()).isCloseTo(0.15 * Math.sqrt(2), within(1e-12));
        assertThat(unsieved.throwIntervalM().width()).isGreaterThan(5);
        Comparison unanswered = with(ProductForm.UNANSWERED, 0.75, null);
        assertThat(unanswered.other.d50Mm()).isEqualTo(3.2);
    }

    /** Of another form it is filled with what is usual for that form. */
    @Test
    void aGapOfAnotherFormIsFilledWithWhatIsUsual() {
        Comparison prills = with(ProductForm.PRILLED_UREA, 0.75, null);
        assertThat(prills.other.d50Mm()).isEqualTo(2.0);
        assertThat(prills.other.d50Error()).isEqualTo(0.15);
        Comparison other = with(ProductForm.OTHER, null, Examples.sizes(3.2));
        assertThat(other.other.bulkKgPerL()).isEqualTo(0.88);
        assertThat(other.other.bulkError()).isEqualTo(0.14);
    }

    /** By hand: 0.03/0.59 and 0.04/0.56 in quadrature are 0.0877, twice 0.04/0.56 are 0.1010. */
    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, GRANULAR_UREA, 0.02",
        "GRANULAR_UREA, PRILLED_UREA, 0.0719",
        "GRANULAR_UREA, CALCIUM_AMMONIUM_NITRATE, 0.0877",
        "AMMONIUM_NITRATE, CALCIUM_AMMONIUM_NITRATE, 0.1010",
        "OTHER, OTHER, 0.04",
        "GRANULAR_UREA, OTHER, 0.04",
        "UNANSWERED, GRANULAR_UREA, 0.04"
    })
    void theErrorOfThePacking(ProductForm form, ProductForm other, double error) {
        assertThat(Comparison.packingError(form, other)).isCloseTo(error, within(1e-4));
        assertThat(Comparison.packingError(other, form)).isCloseTo(error, within(1e-4));
    }

    /** Errors of both products and of their packing, in quadrature. */
    @Test
    void theErrorOfTheThrow() {
        Comparison found = with(ProductForm.GRANULAR_UREA, 0.75, Examples.sizes(3.2));
        double own = found.productThrow.edge().errorM(0.02 / 0.75, 0.015, 0.01);
        double theirs = found.otherThrow.edge().errorM(0.015, 0.015, 0.01);
        double expected = Math.sqrt(square(own)
                + square(theirs)
                + square(0.02 * found.otherThrow.edge().perLnDensity()));
        assertThat(found.throwErrorM()).isCloseTo(expected, within(1e-9));
    }
}
