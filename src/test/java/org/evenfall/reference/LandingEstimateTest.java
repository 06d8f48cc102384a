package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.granule.ProductForm;
import org.junit.jupiter.api.Test;

class LandingEstimateTest {

    private static final EstimatedProperties UREA =
            EstimatedProperties.of(ProductForm.GRANULAR_UREA, 0.75, 0.02, Examples.sizes(3.2), null, null);

    private static final LandingEstimate LANDING = new LandingEstimate(UREA, ProductThrow.of(UREA, 45, 0.75));

    @Test
    void withoutErrorsItLandsByItsFigures() {
        assertThat(LANDING.drawnM(new double[] {0, 0, 0}, 0)).containsExactly(LANDING.metres());
        assertThat(LANDING.metres()).hasSize(3).isSorted();
    }

    /** Density error 0.02, size error 0.015, spread error 0.01 of the example; each moves every size by its own slope. */
    @Test
    void everyErrorMovesEverySize() {
        double[] drawn = LANDING.drawnM(new double[] {1, -2, 3}, 0.05);
        for (int i = 0; i < 3; i++) {
            ThrowLine line = LANDING.at().lines().get(i);
            double expected = line.metres()
                    + line.perLnDensity() * (0.02 + 0.05)
                    + line.perLnDiameter() * (-0.03 + line.z() * 0.03);
            assertThat(drawn[i]).isCloseTo(expected, within(1e-9));
        }
        assertThat(LANDING.at().fine().z()).isEqualTo(-0.99446);
        assertThat(LANDING.at().median().z()).isZero();
        assertThat(LANDING.at().edge().z()).isEqualTo(0.99446);
    }

    @Test
    void theDistanceIsTheMeanDifferenceOfTheThree() {
        assertThat(LandingEstimate.distanceM(new double[] {10, 15, 20}, new double[] {11, 13, 24}))
                .isCloseTo(7.0 / 3, within(1e-12));
    }
}
