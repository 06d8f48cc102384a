package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LogNormalFitTest {

    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** A case of any sieves and any shares, not log-normal, zero classes among them. */
    private record Case(double[] apertures, double[] shares) {

        static Case of(int seed) {
            Random random = new Random(seed);
            double[] apertures = new double[2 + random.nextInt(7)];
            double aperture = 0.5 + 2 * random.nextDouble();
            for (int i = 0; i < apertures.length; i++) {
                apertures[i] = aperture;
                aperture *= 1.1 + 0.5 * random.nextDouble();
            }
            double[] shares = new double[apertures.length + 1];
            double centre = random.nextInt(shares.length);
            for (int i = 0; i < shares.length; i++) {
                shares[i] = random.nextInt(4) == 0 ? 0 : random.nextDouble() * Math.exp(-0.7 * Math.abs(i - centre));
            }
            // an inner class with mass, and one that is no neighbour of it: there the likelihood has a highest point
            shares[1] += 0.2;
            shares[shares.length - 1] += shares.length == 3 ? 0.1 : 0.02;
            shares[0] += shares.length == 3 ? 0.1 : 0;
            double sum = Arrays.stream(shares).sum();
            return new Case(
                    apertures, Arrays.stream(shares).map(share -> share / sum).toArray());
        }
    }

    /** Second route: expectation maximisation with another library's normal distribution. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithExpectationMaximisation(int seed) {
        Case one = Case.of(seed);
        LogNormalFit fit = LogNormalFit.of(one.apertures, one.shares);
        if (fit.isBound()) {
            assertThat(fit.sigma()).isEqualTo(ClassLikelihood.WIDEST_SIGMA);
            return;
        }
        double[] reference = expectationMaximisation(one.apertures, one.shares);
        assertThat(fit.mu()).isCloseTo(reference[0], within(1e-6));
        assertThat(fit.sigma()).isCloseTo(reference[1], within(1e-6));
    }

    @Test
    void mostCasesAboveAreFitted() {
        assertThat(seeds().filter(seed -> {
                            Case one = Case.of(seed);
                            return !LogNormalFit.of(one.apertures, one.shares).isBound();
                        })
                        .count())
                .isGreaterThan(50);
    }

    /** Third route: no point of a grid is more likely. Source (from memory): Burridge 1981, one maximum. */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("seeds")
    void noPointOfAGridIsMoreLikely(int seed) {
        Case one = Case.of(seed);
        LogNormalFit fit = LogNormalFit.of(one.apertures, one.shares);
        double best = logLikelihood(one, fit.mu(), fit.sigma());
        assertThat(best).isGreaterThan(Double.NEGATIVE_INFINITY);
        double low = Math.log(one.apertures[0]) - 1;
        double high = Math.log(one.apertures[one.apertures.length - 1]) + 1;
        for (int i = 0; i <= 60; i++) {
            for (double sigma = 0.03; sigma <= ClassLikelihood.WIDEST_SIGMA; sigma *= 1.1) {
                double far = logLikelihood(one, low + (high - low) * i / 60, sigma);
                double near = logLikelihood(
                        one,
                        fit.mu() + 0.01 * (i - 30) / 30,
                        Math.min(fit.sigma() * (0.9 + 0.2 * sigma), ClassLikelihood.WIDEST_SIGMA));
                assertThat(Math.max(far, near)).isLessThanOrEqualTo(best + 1e-12);
            }
        }
    }

    private static double logLikelihood(Case one, double mu, double sigma) {
        double sum = 0;
        double before = 0;
        for (int i = 0; i < one.shares.length; i++) {
            double below = i == one.apertures.length
                    ? 1
                    : NORMAL.cumulativeProbability((Math.log(one.apertures[i]) - mu) / sigma);
            if (one.shares[i] > 0) {
                sum += one.shares[i] * Math.log(below - before);
            }
            before = below;
        }
        return sum;
    }

    private static double[] expectationMaximisation(double[] apertures, double[] shares) {
        double mu = Math.log(apertures[apertures.length / 2]);
        double sigma = 0.5;
        for (int step = 0; step < 200_000; step++) {
            double mean = 0;
            double square = 0;
            for (int i = 0; i < shares.length; i++) {
                if (shares[i] > 0) {
                    double a = i == 0 ? Double.NEGATIVE_INFINITY : (Math.log(apertures[i - 1]) - mu) / sigma;
                    double b = i == apertures.length ? Double.POSITIVE_INFINITY : (Math.log(apertures[i]) - mu) / sigma;
                    double mass = NORMAL.probability(a, b);
                    double first = (NORMAL.density(a) - NORMAL.density(b)) / mass;
                    double second = 1 + (moment(a) - moment(b)) / mass;
                    mean += shares[i] * (mu + sigma * first);
                    square += shares[i] * (mu * mu + 2 * mu * sigma * first + sigma * sigma * second);
                }
            }
            double next = Math.sqrt(square - mean * mean);
            boolean settled = Math.abs(mean - mu) + Math.abs(next - sigma) < 1e-13;
            mu = mean;
            sigma = next;
            if (settled) {
                break;
            }
        }
        return new double[] {mu, sigma};
    }

    private static double moment(double z) {
        return Double.isInfinite(z) ? 0 : z * NORMAL.density(z);
    }

    /** Standard errors against simulated sieving of so many granules. */
    @Tag("slow")
    @Test
    void errorsAreThoseOfRepeatedSieving() {
        Random random = new Random(3);
        double[] apertures = {2.0, 3.15, 4.5};
        LogNormalFit truth = new LogNormalFit(Math.log(3.2), 0.25, false);
        int granules = 400;
        int repeats = 2000;
        double[] mus = new double[repeats];
        double[] sigmas = new double[repeats];
        for (int r = 0; r < repeats; r++) {
            double[] shares = new double[4];
            for (int g = 0; g < granules; g++) {
                double d = Math.exp(truth.mu() + truth.sigma() * random.nextGaussian());
                shares[d < 2 ? 0 : d < 3.15 ? 1 : d < 4.5 ? 2 : 3] += 1.0 / granules;
            }
            LogNormalFit fit = LogNormalFit.of(apertures, shares);
            mus[r] = fit.mu();
            sigmas[r] = fit.sigma();
        }
        double[] errors = truth.errors(apertures, granules);
        // 2000 repeats give a standard deviation to 1.6 %; three of these
        assertThat(sd(mus)).isCloseTo(errors[0], within(0.05 * errors[0]));
        assertThat(sd(sigmas)).isCloseTo(errors[1], within(0.06 * errors[1]));
    }

    private static double sd(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1));
    }

    @Test
    void massAtBothEndsOnlyIsNoProduct() {
        LogNormalFit torn = LogNormalFit.of(new double[] {2, 4}, new double[] {0.5, 0, 0.5});
        assertThat(torn.isBound()).isTrue();
        assertThat(torn.sigma()).isEqualTo(ClassLikelihood.WIDEST_SIGMA);
        assertThat(torn.mu()).isCloseTo(Math.log(Math.sqrt(8)), within(1e-9));
        LogNormalFit nearly = LogNormalFit.of(new double[] {2, 4}, new double[] {0.7, 1e-6, 0.3 - 1e-6});
        assertThat(nearly.isBound()).isTrue();
        assertThat(nearly.mu()).isLessThan(Math.log(2));
    }

    /** Three classes and two figures to find: the fit meets the shares exactly. */
    @Test
    void threeClassesAreMetExactly() {
        double[] shares = {0.03, 0.66, 0.31};
        double[] found = LogNormalFit.of(new double[] {2, 3.5}, shares).shares(new double[] {2, 3.5});
        for (int i = 0; i < 3; i++) {
            assertThat(found[i]).isCloseTo(shares[i], within(1e-9));
        }
    }
}
