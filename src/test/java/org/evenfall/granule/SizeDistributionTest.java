package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.junit.jupiter.api.Test;

class SizeDistributionTest {

    private static final SizeDistribution SIZES = SizeDistribution.exact(3.2, 1.2);

    /** Against another library's log-normal distribution. */
    @Test
    void sharesDensitiesAndQuantiles() {
        LogNormalDistribution reference = new LogNormalDistribution(Math.log(3.2), Math.log(1.2));
        for (double d : new double[] {0.5, 1.9, 2.5, 3.2, 4.1, 6, 12}) {
            assertThat(SIZES.shareFinerThan(d)).isCloseTo(reference.cumulativeProbability(d), within(1e-12));
            assertThat(SIZES.densityPerMm(d)).isCloseTo(reference.density(d), within(1e-12));
        }
        for (double share : new double[] {0.05, 0.16, 0.5, 0.84, 0.9}) {
            assertThat(SIZES.quantileMm(share)).isCloseTo(reference.inverseCumulativeProbability(share), within(1e-6));
        }
    }

    @Test
    void indices() {
        double d16 = SIZES.quantileMm(0.16);
        double d84 = SIZES.quantileMm(0.84);
        assertThat(SIZES.spreadIndexPercent()).isCloseTo(100 * (d84 - d16) / (2 * 3.2), within(1e-12));
        assertThat(SIZES.uniformityIndex())
                .isCloseTo(100 * SIZES.quantileMm(0.05) / SIZES.quantileMm(0.9), within(1e-12));
        assertThat(SizeDistribution.sgn(SIZES.d50Mm())).isCloseTo(320, within(1e-12));
    }

    @Test
    void oneSizeOnly() {
        SizeDistribution one = SizeDistribution.exact(3, 1);
        assertThat(one.shareFinerThan(2.9)).isZero();
        assertThat(one.shareFinerThan(3)).isEqualTo(1);
        assertThat(one.densityPerMm(3)).isZero();
        assertThat(one.quantileMm(0.9)).isEqualTo(3);
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> new SizeDistribution(0, 1.2, 0, 0, false)).hasMessageContaining("d50Mm");
        assertThatThrownBy(() -> new SizeDistribution(3, 0.9, 0, 0, false)).hasMessageContaining("geometricSd");
        assertThatThrownBy(() -> new SizeDistribution(3, 1.2, Double.NaN, 0, false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SizeDistribution(3, 1.2, -0.01, 0, false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SizeDistribution(3, 1.2, 0, -0.01, false)).hasMessageContaining("errors");
    }

    @Test
    void nothingIsSmallerThanNothing() {
        assertThat(SIZES.shareFinerThan(0)).isZero();
        assertThat(SIZES.shareFinerThan(-1)).isZero();
        assertThat(SIZES.densityPerMm(0)).isZero();
        assertThat(SIZES.densityPerMm(-1)).isZero();
    }

    @Test
    void aMedianAloneGetsAGuessedSpread() {
        assertThat(SizeDistribution.medianOnly(3)).isEqualTo(new SizeDistribution(3, 1.2, 0.03, 0.05, true));
        assertThat(SizeDistribution.exact(3, 1.2)).isEqualTo(new SizeDistribution(3, 1.2, 0, 0, false));
        assertThat(SIZES.sigma()).isCloseTo(Math.log(1.2), within(1e-12));
    }
}
