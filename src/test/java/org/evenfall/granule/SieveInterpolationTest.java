package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SieveInterpolationTest {

    private static final double[] APERTURES = {2, 3.15, 4.5};

    @ParameterizedTest
    @CsvSource({"9.99, ", "10, 2", "60, 3.15", "95, 4.5", "95.01, "})
    void atTheAperturesAndNotOutsideThem(double percent, Double diameterMm) {
        var found = SieveInterpolation.diameterMm(APERTURES, new double[] {10, 60, 95}, percent);
        assertThat(found.isPresent()).isEqualTo(diameterMm != null);
        if (diameterMm != null) {
            assertThat(found.getAsDouble()).isEqualTo(diameterMm);
        }
    }

    /** A fifth of the way from 10 to 60 %, on the logarithm of the aperture. */
    @Test
    void linearOverTheLogarithmOfTheAperture() {
        assertThat(SieveInterpolation.diameterMm(APERTURES, new double[] {10, 60, 95}, 20)
                        .orElseThrow())
                .isCloseTo(2 * Math.pow(3.15 / 2, 0.2), within(1e-12));
    }

    /** A fifth of the way from 10 to 60 %, on the aperture itself, and back. */
    @Test
    void linearOverTheAperture() {
        double[] passing = {10, 60, 95};
        assertThat(SieveInterpolation.linearDiameterMm(APERTURES, passing, 20).orElseThrow())
                .isCloseTo(2.23, within(1e-12));
        assertThat(SieveInterpolation.linearPassingPercent(APERTURES, passing, 2.23)
                        .orElseThrow())
                .isCloseTo(20, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1.99, ", "2, 10", "3.15, 60", "4.5, 95", "4.51, "})
    void sharesAtTheAperturesAndNotOutsideThem(double diameterMm, Double percent) {
        var found = SieveInterpolation.linearPassingPercent(APERTURES, new double[] {10, 60, 95}, diameterMm);
        assertThat(found.isPresent()).isEqualTo(percent != null);
        if (percent != null) {
            assertThat(found.getAsDouble()).isEqualTo(percent);
        }
    }

    @Test
    void anEmptyClassGivesItsFinerAperture() {
        double[] passing = {10, 10, 95};
        assertThat(SieveInterpolation.diameterMm(APERTURES, passing, 10)).hasValue(2);
        assertThat(SieveInterpolation.diameterMm(APERTURES, passing, 52.5).orElseThrow())
                .isCloseTo(Math.sqrt(3.15 * 4.5), within(1e-12));
    }
}
