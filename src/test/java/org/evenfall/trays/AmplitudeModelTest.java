package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmplitudeModelTest {

    private static final AmplitudePrior PRIOR = new AmplitudePrior(40, 2.5, 0.15, 2);
    private static final double[] SLOPE_VARIANCE = {6.25, 9};

    private static double[] at(double first, double second) {
        return new double[] {first, second};
    }

    /** Each part of the covariance on its own, at settings that differ in both levers. */
    @Test
    void theCovarianceIsOffsetLineBendAndDistanceFromTheLine() {
        double[] one = at(2, -1);
        double[] other = at(3, 1);
        double[] none = {0, 0};
        assertThat(new AmplitudePrior(4, 9, 0, 0).covariance(one, other, none)).isEqualTo(16);
        // 6.25 · 2 · 3 − 9 · 1 · 1
        assertThat(new AmplitudePrior(0, 9, 0, 0).covariance(one, other, SLOPE_VARIANCE))
                .isCloseTo(28.5, within(1e-12));
        // (2 · 3 − 1)² · 0.3²
        assertThat(new AmplitudePrior(0, 9, 0.3, 0).covariance(one, other, none))
                .isCloseTo(25 * 0.09, within(1e-12));
        // 1 + 4 steps² apart
        assertThat(new AmplitudePrior(0, 9, 0, 2).covariance(one, other, none))
                .isCloseTo(4 * Math.exp(-5 / 4.5), within(1e-12));
    }

    /** Source (from memory): Rasmussen and Williams 2006; with one test, the weighted mean of two normal numbers. */
    @Test
    void oneTestIsWeighedAgainstThePrior() {
        AmplitudeModel model = new AmplitudeModel(PRIOR, SLOPE_VARIANCE, List.of(at(0, 0)), new double[] {9});
        AmplitudeModel.Fit fit = model.fit(new double[] {-24}, at(5, 0));
        double prior = 1600 + 4;
        assertThat(model.mean(fit, at(0, 0))).isCloseTo(-24 * prior / (prior + 9), within(1e-9));
        assertThat(model.variance(at(0, 0))).isCloseTo(prior * 9 / (prior + 9), within(1e-9));
        assertThat(fit.logLikelihood()).isCloseTo(-24 * 24 / (2 * (prior + 9)), within(1e-12));
        // two steps up the line; what is off it is another there
        double covariance = 1600 + 4 * Math.exp(-4 / 4.5);
        assertThat(model.mean(fit, at(2, 0))).isCloseTo(10 - 24 * covariance / (prior + 9), within(1e-9));
        double variance = 1600 + 25 + 0.0225 * 16 + 4;
        assertThat(model.variance(at(2, 0))).isCloseTo(variance - covariance * covariance / (prior + 9), within(1e-6));
    }

    /** Exact tests on a line of another slope than expected are followed. */
    @ParameterizedTest
    @CsvSource({"-7", "-2", "0"})
    void manyTestsTeachTheSlope(double slope) {
        List<double[]> settings = List.of(at(-4, 0), at(-2, 0), at(0, 0));
        AmplitudeModel model = new AmplitudeModel(PRIOR, SLOPE_VARIANCE, settings, new double[] {0.01, 0.01, 0.01});
        AmplitudeModel.Fit fit = model.fit(new double[] {10 - 4 * slope, 10 - 2 * slope, 10}, at(-5, -5));
        assertThat(model.mean(fit, at(0, 0))).isCloseTo(10, within(0.05));
        assertThat(model.mean(fit, at(2, 0))).isCloseTo(10 + 2 * slope, within(2.0));
        // of the other lever nothing is known but the prior
        assertThat(model.mean(fit, at(0, 2))).isCloseTo(0, within(1.0));
        assertThat(model.variance(at(0, 2))).isGreaterThan(4 * 9);
        assertThat(model.variance(at(2, 0))).isLessThan(12);
    }

    /** The likelihood of the better slope is the greater. */
    @Test
    void theBetterSlopeExplainsTheTestsBetter() {
        AmplitudeModel model =
                new AmplitudeModel(PRIOR, SLOPE_VARIANCE, List.of(at(-3, 0), at(0, 0)), new double[] {9, 9});
        double[] amplitudes = {-30, -15};
        assertThat(model.fit(amplitudes, at(5, 0)).logLikelihood())
                .isGreaterThan(model.fit(amplitudes, at(-5, 0)).logLikelihood() + 3);
    }
}
