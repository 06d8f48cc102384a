package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SameProductTest {

    private static final SizeDistribution SIZES = new SizeDistribution(3.4, 1.25, 0.03, 0.02, false);

    private static EstimatedProperties of(ProductForm form, @Nullable Double bulk, @Nullable SizeDistribution sizes) {
        return EstimatedProperties.of(form, bulk, 0.015, sizes, null, null);
    }

    /** ln(N(x; 0, s) / N(y; 0, t)) by hand: ln(t/s) − x²/2s² + y²/2t². */
    private static double ln(double fromOther, double error, double fromUsual, double variation) {
        return Math.log(variation / error)
                - fromOther * fromOther / (2 * error * error)
                + fromUsual * fromUsual / (2 * variation * variation);
    }

    @Test
    void everyFigureThatBothHaveCounts() {
        EstimatedProperties product = of(ProductForm.OTHER, 0.95, SIZES);
        EstimatedProperties other = of(ProductForm.OTHER, 0.97, new SizeDistribution(3.3, 1.20, 0.03, 0.02, false));
        double bulk =
                ln(Math.log(0.95 / 0.97), Math.hypot(0.015, 0.015), Math.log(0.95 / 0.88), Math.hypot(0.14, 0.015));
        double size = ln(Math.log(3.4 / 3.3), Math.hypot(0.03, 0.03), Math.log(3.4 / 3.25), Math.hypot(0.15, 0.03));
        double spread =
                ln(Math.log(1.25 / 1.20), Math.hypot(0.02, 0.02), Math.log(1.25) - 0.18, Math.hypot(0.05, 0.02));
        assertThat(SameProduct.lnLikelihoodRatio(product, other)).isCloseTo(bulk + size + spread, within(1e-9));
        assertThat(SameProduct.lnLikelihoodRatio(product, of(ProductForm.OTHER, null, SIZES)))
                .isCloseTo(
                        ln(0, Math.hypot(0.03, 0.03), Math.log(3.4 / 3.25), Math.hypot(0.15, 0.03))
                                + ln(0, Math.hypot(0.02, 0.02), Math.log(1.25) - 0.18, Math.hypot(0.05, 0.02)),
                        within(1e-9));
        assertThat(SameProduct.lnLikelihoodRatio(product, of(ProductForm.OTHER, 0.97, null)))
                .isCloseTo(bulk, within(1e-9));
        assertThat(SameProduct.lnLikelihoodRatio(
                        product, of(ProductForm.OTHER, null, SizeDistribution.medianOnly(3.3))))
                .isCloseTo(size, within(1e-9));
    }

    /** Measured ever so well, two deliveries still differ by 1.5 % in size and 0.01 in sigma. */
    @Test
    void twoDeliveriesAreNeverMoreAlike() {
        SizeDistribution exact = new SizeDistribution(3.25, Math.exp(0.18), 0.001, 0.001, false);
        EstimatedProperties product = of(ProductForm.OTHER, null, exact);
        assertThat(SameProduct.lnLikelihoodRatio(product, product))
                .isCloseTo(Math.log(0.15 / 0.015) + Math.log(0.05 / 0.01), within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, GRANULAR_UREA, 0",
        "GRANULAR_UREA, UNANSWERED, 0",
        "UNANSWERED, OTHER, 0",
        "GRANULAR_UREA, PRILLED_UREA, 0.02",
        "GRANULAR_UREA, OTHER, 0.02"
    })
    void oneProductIsSeldomEnteredUnderTwoForms(ProductForm form, ProductForm other, double chance) {
        assertThat(SameProduct.lnLikelihoodRatio(of(form, null, null), of(other, null, null)))
                .isCloseTo(chance == 0 ? 0 : Math.log(chance), within(1e-12));
    }
}
