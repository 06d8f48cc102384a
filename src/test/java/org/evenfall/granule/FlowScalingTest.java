package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlowScalingTest {

    private static double flow(double openingMm, double d50Mm) {
        return FlowScaling.kgPerMin(0.75, openingMm, d50Mm, 9.81);
    }

    /** Source: Beverloo's form: in proportion to density and the root of gravity, to the power 2.5 of the effective opening. */
    @Test
    void scalesAsTheForm() {
        assertThat(FlowScaling.kgPerMin(1.5, 50, 3, 9.81)).isCloseTo(2 * flow(50, 3), within(1e-9));
        assertThat(FlowScaling.kgPerMin(0.75, 50, 3, 4 * 9.81)).isCloseTo(2 * flow(50, 3), within(1e-9));
        assertThat(flow(50, 4) / flow(50, 3)).isCloseTo(Math.pow((50 - 5.6) / (50 - 4.2), 2.5), within(1e-12));
    }

    /**
     * Source (from memory): Beverloo's constants 0.58 and 1.4.
     *
     * <p>0.58 × 750 kg/m³ × √9.81 × (0.050 − 1.4 × 0.003)^2.5 m × 60, computed apart.
     */
    @Test
    void oneValueComputedApart() {
        assertThat(flow(50, 3)).isCloseTo(36.70, within(0.01));
    }

    @Test
    void anOpeningOfKMedianDiametersLetsNothingThrough() {
        assertThat(flow(3.51, 2.5)).isPositive();
        assertThatThrownBy(() -> flow(3.5, 2.5)).hasMessageContaining("opening");
        assertThatThrownBy(() -> flow(3.49, 2.5)).isInstanceOf(IllegalArgumentException.class);
    }
}
