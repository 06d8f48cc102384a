package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GranuleTest {

    /** Elmy, Kaklamanos 2015, R package geotech (CRAN): the example's apertures and passing shares. */
    @Test
    void interpolationAsInAPublishedPackage() {
        double[] apertures = {0.075, 0.106, 0.425, 0.85, 2.00, 4.75, 9.5};
        double[] passing = {4.82, 8.51, 50.00, 66.36, 81.49, 90.23, 95.72};
        assertThat(SieveInterpolation.diameterMm(apertures, passing, 50).orElseThrow())
                .isEqualTo(0.425);
        assertThat(SieveInterpolation.diameterMm(apertures, passing, 10).orElseThrow())
                .isCloseTo(0.1114, within(1e-4));
        assertThat(SieveInterpolation.diameterMm(apertures, passing, 60).orElseThrow())
                .isCloseTo(0.6492, within(1e-4));
        assertThat(SieveInterpolation.diameterMm(apertures, passing, 99)).isEmpty();
    }

    /** Street, Sherratt, Ohio State University 2012: a median of 1.50 mm is size guide number 150. */
    @Test
    void sizeGuideNumber() {
        SieveResult result = Sieves.analyse(List.of(1.0, 1.5, 2.2), List.of(List.of(15.0, 35.0, 35.0, 15.0)));
        assertThat(result.sgn()).isEqualTo(100 * result.d50Mm());
        assertThat(result.sgn()).isCloseTo(150, within(4.0));
    }

    @Test
    void recoversAKnownDistributionThroughAnySieves() {
        Random random = new Random(42);
        for (int i = 0; i < 300; i++) {
            double d50 = 2 + 2 * random.nextDouble();
            double gsd = 1.12 + 0.3 * random.nextDouble();
            SizeDistribution truth = new SizeDistribution(d50, gsd, 0, 0, false);
            List<Double> apertures = new ArrayList<>();
            double aperture = d50 * (0.6 + 0.2 * random.nextDouble());
            for (int k = 2 + random.nextInt(5); k >= 0; k--) {
                apertures.add(aperture);
                aperture *= 1.08 + 0.3 * random.nextDouble();
            }
            List<Double> amounts = new ArrayList<>();
            double before = 0;
            for (double edge : apertures) {
                amounts.add(truth.shareFinerThan(edge) - before);
                before = truth.shareFinerThan(edge);
            }
            amounts.add(1 - before);
            SieveResult found = Sieves.analyse(apertures, List.of(amounts));
            if (!found.distribution().spreadIsBound()) {
                assertThat(found.d50Mm()).as(apertures + " " + amounts).isCloseTo(d50, within(0.002 * d50));
                assertThat(found.distribution().geometricSd()).isCloseTo(gsd, within(0.003));
                assertThat(found.worstResidualPercent()).isLessThan(0.05);
            }
        }
    }

    /** Second route: the likelihood on a fine grid has no higher point than the fit. */
    @Test
    void noPointOfAGridIsMoreLikely() {
        double[] apertures = {2.00, 3.15, 4.50};
        double[] shares = {0.04, 0.45, 0.46, 0.05};
        LogNormalFit fit = LogNormalFit.of(apertures, shares);
        double best = likelihood(fit, apertures, shares);
        for (double mu = fit.mu() - 0.1; mu <= fit.mu() + 0.1; mu += 0.001) {
            for (double sigma = 0.8 * fit.sigma(); sigma <= 1.2 * fit.sigma(); sigma += 0.001) {
                assertThat(likelihood(new LogNormalFit(mu, sigma, false), apertures, shares))
                        .isLessThanOrEqualTo(best + 1e-9);
            }
        }
    }

    private static double likelihood(LogNormalFit fit, double[] apertures, double[] shares) {
        double[] expected = fit.shares(apertures);
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * Math.log(expected[i]);
        }
        return sum;
    }

    @Test
    void oneOrTwoClassesGiveABoundOfTheSpread() {
        SieveResult one = Sieves.analyse(List.of(2.0, 3.15, 4.5), List.of(List.of(0.0, 0.0, 100.0, 0.0)));
        assertThat(one.distribution().spreadIsBound()).isTrue();
        assertThat(one.d50Mm()).isBetween(3.15, 4.5);
        SieveResult two = Sieves.analyse(List.of(2.0, 3.15, 4.5), List.of(List.of(0.0, 60.0, 40.0, 0.0)));
        assertThat(two.distribution().spreadIsBound()).isTrue();
        assertThat(two.distribution().shareFinerThan(3.15)).isCloseTo(0.6, within(1e-9));
        assertThat(two.distribution().shareFinerThan(2.0)).isLessThan(0.01);
        SieveResult pan = Sieves.analyse(List.of(2.0, 3.15), List.of(List.of(5.0, 0.0, 0.0)));
        assertThat(pan.d50Mm()).isLessThan(2.0);
    }

    @Test
    void twoSamplesThatDisagreeWidenTheInterval() {
        List<Double> apertures = List.of(2.0, 3.15, 4.5);
        SieveResult alike =
                Sieves.analyse(apertures, List.of(List.of(4.0, 45.0, 46.0, 5.0), List.of(4.0, 45.0, 46.0, 5.0)));
        SieveResult apart =
                Sieves.analyse(apertures, List.of(List.of(14.0, 55.0, 28.0, 3.0), List.of(2.0, 30.0, 56.0, 12.0)));
        assertThat(apart.d50HighMm() / apart.d50LowMm()).isGreaterThan(alike.d50HighMm() / alike.d50LowMm());
        assertThat(alike.samples()).isEqualTo(2);
    }

    @Test
    void densityOfThreeFillings() {
        BulkDensity density = BulkDensities.of(List.of(0.75, 0.76, 0.77), 1, 0);
        assertThat(density.meanKgPerL()).isCloseTo(0.76, within(1e-12));
        assertThat(density.sdKgPerL()).isCloseTo(0.01, within(1e-12));
        assertThat(density.spreadPercent()).isCloseTo(100 * 0.02 / 0.76, within(1e-9));
        assertThat(density.anotherFillingAdvised()).isFalse();
        assertThat(BulkDensities.of(List.of(0.75, 0.78, 0.76), 1, 0).anotherFillingAdvised())
                .isTrue();
        assertThat(BulkDensities.of(List.of(0.75, 0.75), 1, 0).anotherFillingAdvised())
                .isTrue();
        assertThatThrownBy(() -> BulkDensities.of(List.of(), 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Cousins, Roberge, Tabil 2021, CSBE/CIGR: granular urea, 1 325 kg/m³ a granule. */
    @Test
    void granuleDensityOfUrea() {
        ParticleDensity particle = ParticleDensities.fromBulk(
                BulkDensities.of(List.of(0.74, 0.74, 0.745), 1, 0), ProductForm.GRANULAR_UREA);
        assertThat(particle.kgPerM3()).isCloseTo(1325, within(20.0));
        assertThat(particle.plausible()).isTrue();
        assertThat(ParticleDensities.fromBulk(BulkDensities.of(List.of(1.02), 1, 0), ProductForm.GRANULAR_UREA)
                        .plausible())
                .isFalse();
    }

    /** Computed from the formula with C 0.58, k 1.4 (from memory): 750 kg/m³, 50 mm, 3 mm, g 9.81 → 36.70 kg/min. */
    @Test
    void flowThroughAnOpening() {
        assertThat(FlowScaling.kgPerMin(0.75, 50, 3, 9.81)).isCloseTo(36.70, within(0.01));
    }
}
