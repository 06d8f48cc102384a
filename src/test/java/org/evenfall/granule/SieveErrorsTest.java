package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SieveErrorsTest {

    private static final double[] APERTURES = {2, 3.15, 4.5};
    private static final double[] MEAN = {0.05, 0.45, 0.44, 0.06};
    private static final LogNormalFit FIT = LogNormalFit.of(APERTURES, MEAN);

    private static SieveErrors of(double[]... samples) {
        return SieveErrors.of(FIT, APERTURES, MEAN, List.of(samples));
    }

    /** One sample: 40 granules by assumption, and 1 % of the apertures. */
    @Test
    void oneSampleCountsAsFortyGranules() {
        double[] sampling = FIT.errors(APERTURES, 40);
        SieveErrors one = of(MEAN);
        assertThat(one.lnD50()).isCloseTo(Math.hypot(sampling[0], 0.01), within(1e-12));
        assertThat(one.sigma()).isCloseTo(sampling[1], within(1e-12));
    }

    /** What the program says of one sample, and the README with it. */
    @Test
    void oneSampleIsOffByThreeToFivePercent() {
        for (double spread : new double[] {1.15, 1.2, 1.25, 1.3}) {
            for (double d50 : new double[] {2.5, 3.2, 3.6}) {
                SizeDistribution ordinary = SizeDistribution.exact(d50, spread);
                double[] shares = new double[APERTURES.length + 1];
                double before = 0;
                for (int i = 0; i < APERTURES.length; i++) {
                    double finer = ordinary.shareFinerThan(APERTURES[i]);
                    shares[i] = finer - before;
                    before = finer;
                }
                shares[APERTURES.length] = 1 - before;
                LogNormalFit fit = LogNormalFit.of(APERTURES, shares);
                assertThat(100
                                * SieveErrors.of(fit, APERTURES, shares, List.of(shares))
                                        .lnD50())
                        .isBetween(2.5, 5.0);
            }
        }
    }

    /** Two equal samples: no scatter in 3 degrees of freedom against 4 of the assumption: dispersion 4/7. */
    @Test
    void samplesThatAgreeCountMore() {
        double[] sampling = FIT.errors(APERTURES, 80 * 7 / 4.0);
        assertThat(of(MEAN, MEAN).sigma()).isCloseTo(sampling[1], within(1e-12));
    }

    /** Pearson's statistic of the samples over the mean of all, by hand. */
    @Test
    void samplesThatDifferCountLess() {
        double[] first = {0.09, 0.55, 0.32, 0.04};
        double[] second = {0.01, 0.35, 0.56, 0.08};
        double pearson = 2 * 40 * (0.04 * 0.04 / 0.05 + 0.1 * 0.1 / 0.45 + 0.12 * 0.12 / 0.44 + 0.02 * 0.02 / 0.06);
        double[] sampling = FIT.errors(APERTURES, 80 / ((4 + pearson) / 7));
        assertThat(of(first, second).sigma()).isCloseTo(sampling[1], within(1e-9));
    }

    /** Classes without mass say nothing about the scatter: three of four classes leave two degrees of freedom. */
    @Test
    void emptyClassesDoNotCount() {
        double[] mean = {0, 0.5, 0.44, 0.06};
        LogNormalFit fit = LogNormalFit.of(APERTURES, mean);
        double[] sampling = fit.errors(APERTURES, 80 / (4 / 6.0));
        assertThat(SieveErrors.of(fit, APERTURES, mean, List.of(mean, mean)).sigma())
                .isCloseTo(sampling[1], within(1e-12));
    }

    /** A bound is uncertain by half of itself, and the median with it. */
    @Test
    void aBoundIsUncertainByHalfOfItself() {
        double[] mean = {0, 0, 1, 0};
        LogNormalFit fit = LogNormalFit.of(APERTURES, mean);
        SieveErrors bound = SieveErrors.of(fit, APERTURES, mean, List.of(mean));
        assertThat(fit.isBound()).isTrue();
        assertThat(bound.sigma()).isCloseTo(fit.sigma() / 2, within(1e-12));
        double median = Math.hypot(fit.sigma() / 2, fit.sigma() / Math.sqrt(40));
        assertThat(bound.lnD50()).isCloseTo(Math.hypot(median, 0.01), within(1e-12));
    }
}
