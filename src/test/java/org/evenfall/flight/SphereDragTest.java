package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SphereDragTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/flight/sphere-drag.csv", numLinesToSkip = 1)
    void dragAsPublished(double reynolds, double coefficient, double tolerancePercent, String source) {
        assertThat(source).isNotBlank();
        assertThat(SphereDrag.coefficient(reynolds))
                .isCloseTo(coefficient, within(coefficient * tolerancePercent / 100));
    }

    /**
     * Both sides of every breakpoint, from the formulas of Clift, Grace and Weber 1978, Table 5.2, written out here a second
     * time; at the breakpoint itself the lower segment holds.
     */
    @Test
    void eachSideOfABreakpointHasItsOwnFormula() {
        border(0.01, 24 / 0.01 * (1 + 0.01 * 3 / 16), 24 / 0.01 * (1 + 0.1315 * Math.pow(0.01, 0.82 + 0.05 * 2)));
        double w20 = Math.log10(20);
        border(20, 1.2 * (1 + 0.1315 * Math.pow(20, 0.82 - 0.05 * w20)), 1.2 * (1 + 0.1935 * Math.pow(20, 0.6305)));
        double w260 = Math.log10(260);
        border(
                260,
                24.0 / 260 * (1 + 0.1935 * Math.pow(260, 0.6305)),
                Math.pow(10, 1.6435 - 1.1242 * w260 + 0.1558 * w260 * w260));
        double w1500 = Math.log10(1500);
        border(
                1500,
                Math.pow(10, 1.6435 - 1.1242 * w1500 + 0.1558 * w1500 * w1500),
                Math.pow(10, -2.4571 + 2.5558 * w1500 - 0.9295 * w1500 * w1500 + 0.1049 * Math.pow(w1500, 3)));
        double w12 = Math.log10(12_000);
        border(
                12_000,
                Math.pow(10, -2.4571 + 2.5558 * w12 - 0.9295 * w12 * w12 + 0.1049 * Math.pow(w12, 3)),
                Math.pow(10, -1.9181 + 0.6370 * w12 - 0.0636 * w12 * w12));
        double w44 = Math.log10(44_000);
        double plateau = Math.pow(10, -1.9181 + 0.6370 * w44 - 0.0636 * w44 * w44);
        border(44_000, plateau, plateau);
        assertThat(SphereDrag.coefficient(200_000)).isCloseTo(plateau, within(1e-12));
    }

    private static void border(double reynolds, double below, double above) {
        assertThat(SphereDrag.coefficient(reynolds * (1 - 1e-12))).isCloseTo(below, within(1e-9 * below));
        assertThat(SphereDrag.coefficient(reynolds)).isCloseTo(below, within(1e-9 * below));
        assertThat(SphereDrag.coefficient(reynolds * (1 + 1e-12))).isCloseTo(above, within(1e-9 * above));
        assertThat(Math.abs(above / below - 1)).as("jump at Re " + reynolds).isLessThan(0.015);
    }

    /**
     * Density and viscosity in tables of the properties of dry air, by two formulas: the law of ideal gases and Sutherland's.
     * Source (from memory): US Standard Atmosphere 1976, their constants.
     */
    @Test
    void theStandardAir() {
        double kelvin = 293.15;
        assertThat(Air.STANDARD.densityKgPerM3()).isCloseTo(101_325 / (287.053 * kelvin), within(0.001));
        assertThat(Air.STANDARD.viscosityPaS())
                .isCloseTo(1.458e-6 * Math.pow(kelvin, 1.5) / (kelvin + 110.4), within(0.01e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 200_000.0001, Double.NaN})
    void outsideTheCorrelationItRefuses(double reynolds) {
        assertThatThrownBy(() -> SphereDrag.coefficient(reynolds))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("200000");
    }

    @Test
    void dragIsTheCoefficientTimesAirOverGranule() {
        // Re = 1.204 × 10 × 0.0033 / 1.81e-5 = 2195; K = 3 C ρ / (4 d ρp)
        double reynolds = 1.204 * 10 * 0.0033 / 1.81e-5;
        double expected = 3 * SphereDrag.coefficient(reynolds) * 1.204 / (4 * 0.0033 * 1300);
        assertThat(SphereDrag.dragPerM(new Granule(3.3, 1300), 10, Air.STANDARD))
                .isCloseTo(expected, within(1e-12));
        assertThat(SphereDrag.dragPerM(new Granule(3.3, 1300, 1.3), 10, Air.STANDARD))
                .isCloseTo(1.3 * expected, within(1e-12));
        // beyond the correlation the last coefficient is held
        assertThat(SphereDrag.dragPerM(new Granule(20, 1300), 400, Air.STANDARD))
                .isCloseTo(SphereDrag.dragPerM(new Granule(20, 1300), 200, Air.STANDARD), within(1e-12));
    }

    @Test
    void theTableIsTheCorrelation() {
        for (double reynolds = 0.002; reynolds < 1.9e5; reynolds *= 1.0037) {
            double exact = reynolds * SphereDrag.coefficient(reynolds);
            double tolerance = nearABreakpoint(reynolds) ? 0.015 : 1e-5;
            assertThat(DragTable.coefficientTimesReynolds(reynolds * reynolds))
                    .as("Re " + reynolds)
                    .isCloseTo(exact, within(tolerance * exact));
        }
    }

    private static boolean nearABreakpoint(double reynolds) {
        for (double breakpoint : new double[] {0.01, 20, 260, 1500, 12_000, 44_000}) {
            if (Math.abs(reynolds / breakpoint - 1) < 0.004) {
                return true;
            }
        }
        return false;
    }

    /** Below the table the law of Stokes, C Re = 24; above it the last coefficient. */
    @Test
    void outsideTheTable() {
        assertThat(DragTable.coefficientTimesReynolds(0)).isCloseTo(24, within(0.005));
        assertThat(DragTable.coefficientTimesReynolds(1e-9)).isCloseTo(24, within(0.005));
        double plateau = SphereDrag.coefficient(200_000);
        for (double reynolds : new double[] {3e5, 0x1p20, 1.1e6, 5e6}) {
            assertThat(DragTable.coefficientTimesReynolds(reynolds * reynolds))
                    .isCloseTo(plateau * reynolds, within(1e-5 * plateau * reynolds));
        }
    }
}
