package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
        assertThat(SIZES.sgn()).isCloseTo(320, within(1e-12));
    }

    @Test
    void oneSizeOnly() {
        SizeDistribution one = SizeDistribution.exact(3, 1);
        assertThat(one.shareFinerThan(2.9)).isZero();
        assertThat(one.shareFinerThan(3.1)).isEqualTo(1);
        assertThat(one.quantileMm(0.9)).isEqualTo(3);
    }

    @Test
    void theCurveHoldsAllMass() {
        List<SizeCurve.Point> curve = SizeCurve.of(SIZES, 0.5, 10, 2001);
        double area = 0;
        for (int i = 1; i < curve.size(); i++) {
            area += (curve.get(i).percentPerMm() + curve.get(i - 1).percentPerMm())
                    / 2
                    * (curve.get(i).diameterMm() - curve.get(i - 1).diameterMm());
        }
        assertThat(area).isCloseTo(100, within(1e-3));
        assertThat(curve.get(2000).finerPercent()).isCloseTo(100, within(1e-6));
        assertThatThrownBy(() -> SizeCurve.of(SIZES, 3, 2, 10)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> new SizeDistribution(0, 1.2, 0, 0, false)).hasMessageContaining("d50Mm");
        assertThatThrownBy(() -> new SizeDistribution(3, 0.9, 0, 0, false)).hasMessageContaining("geometricSd");
        assertThatThrownBy(() -> new SizeDistribution(3, 1.2, Double.NaN, 0, false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(SizeDistribution.medianOnly(3).spreadIsBound()).isTrue();
    }
}
