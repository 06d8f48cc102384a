package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeCurveTest {

    private static final SizeDistribution SIZES = SizeDistribution.exact(3.2, 1.2);

    @Test
    void holdsAllMass() {
        List<SizeCurve.Point> curve = SizeCurve.of(SIZES, 0.5, 10, 2001);
        double area = 0;
        for (int i = 1; i < curve.size(); i++) {
            area += (curve.get(i).percentPerMm() + curve.get(i - 1).percentPerMm())
                    / 2
                    * (curve.get(i).diameterMm() - curve.get(i - 1).diameterMm());
        }
        assertThat(area).isCloseTo(100, within(1e-3));
        assertThat(curve.get(2000).finerPercent()).isCloseTo(100, within(1e-6));
    }

    @Test
    void twoPointsAreItsEnds() {
        List<SizeCurve.Point> curve = SizeCurve.of(SIZES, 2, 5, 2);
        assertThat(curve).extracting(SizeCurve.Point::diameterMm).containsExactly(2.0, 5.0);
        assertThat(curve.get(0).percentPerMm()).isCloseTo(100 * SIZES.densityPerMm(2), within(1e-12));
        assertThat(curve.get(0).finerPercent()).isCloseTo(100 * SIZES.shareFinerThan(2), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 2, 10", "3, 3, 10", "3, 2, 10", "1, 2, 1", "NaN, 2, 10"})
    void refusesTheImpossible(double from, double to, int points) {
        assertThatThrownBy(() -> SizeCurve.of(SIZES, from, to, points)).hasMessageContaining("fromMm");
    }
}
