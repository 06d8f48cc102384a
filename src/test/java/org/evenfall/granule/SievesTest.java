package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SievesTest {

    private static final List<Double> USUAL = List.of(2.0, 3.15, 4.5);

    /** Shares of a known distribution on given sieves, %. */
    private static List<Double> sieved(SizeDistribution truth, List<Double> apertures) {
        List<Double> amounts = new ArrayList<>();
        double before = 0;
        for (double edge : apertures) {
            amounts.add(100 * (truth.shareFinerThan(edge) - before));
            before = truth.shareFinerThan(edge);
        }
        amounts.add(100 * (1 - before));
        return amounts;
    }

    @Test
    void recoversAKnownDistributionThroughAnySieves() {
        Random random = new Random(42);
        int bounds = 0;
        for (int i = 0; i < 500; i++) {
            double d50 = 2 + 2 * random.nextDouble();
            double gsd = 1.12 + 0.3 * random.nextDouble();
            List<Double> apertures = new ArrayList<>();
            double aperture = d50 * (0.6 + 0.2 * random.nextDouble());
            for (int k = 2 + random.nextInt(5); k >= 0; k--) {
                apertures.add(aperture);
                aperture *= 1.08 + 0.3 * random.nextDouble();
            }
            SieveResult found = Sieves.analyse(apertures, List.of(sieved(SizeDistribution.exact(d50, gsd), apertures)));
            if (found.distribution().spreadIsBound()) {
                bounds++;
                continue;
            }
            assertThat(found.d50Mm()).isCloseTo(d50, within(1e-5 * d50));
            assertThat(found.distribution().geometricSd()).isCloseTo(gsd, within(1e-5));
            assertThat(found.worstResidualPercent()).isLessThan(1e-4);
            assertThat(found.indices().sgn()).isEqualTo(100 * found.d50Mm());
        }
        assertThat(bounds).isLessThan(10);
    }

    /** Whatever amounts come out of a box, the answer is finite, ordered and within reach of the sieves. */
    @Test
    void anyAmountsGiveAnAnswer() {
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            List<Double> apertures = new ArrayList<>();
            double aperture = 0.5 + 3 * random.nextDouble();
            for (int k = 2 + random.nextInt(7); k > 0; k--) {
                apertures.add(aperture);
                aperture *= 1.02 + random.nextDouble();
            }
            List<List<Double>> samples = new ArrayList<>();
            for (int s = 1 + random.nextInt(3); s > 0; s--) {
                List<Double> amounts = new ArrayList<>();
                for (int c = 0; c <= apertures.size(); c++) {
                    amounts.add(random.nextInt(3) > 0 ? 0.0 : Math.pow(10, 4 * random.nextDouble() - 2));
                }
                amounts.set(random.nextInt(amounts.size()), 50.0);
                samples.add(amounts);
            }
            SieveResult found = Sieves.analyse(apertures, samples);
            assertThat(found.d16Mm()).as(apertures + " " + samples).isPositive().isLessThan(found.d50Mm());
            assertThat(found.d84Mm()).isGreaterThan(found.d50Mm()).isFinite();
            assertThat(found.d50IntervalMm().low()).isLessThan(found.d50Mm());
            assertThat(found.d50IntervalMm().high())
                    .isGreaterThan(found.d50Mm())
                    .isFinite();
            assertThat(found.d50Mm()).isBetween(apertures.get(0) / 2.001, 2.001 * apertures.get(apertures.size() - 1));
            assertThat(found.shareUnder2MmPercent()).isBetween(0.0, 100.0 + 1e-9);
            assertThat(found.share2To4MmPercent()).isBetween(0.0, 100.0 + 1e-9);
            assertThat(found.sharesPercent().stream().mapToDouble(s -> s).sum()).isCloseTo(100, within(1e-9));
        }
    }

    @Test
    void oneClassGivesABound() {
        SieveResult one = Sieves.analyse(USUAL, List.of(List.of(0.0, 0.0, 100.0, 0.0)));
        assertThat(one.distribution().spreadIsBound()).isTrue();
        assertThat(one.d50Mm()).isCloseTo(Math.sqrt(3.15 * 4.5), within(1e-9));
        assertThat(one.d50IntervalMm().low()).isGreaterThan(3.0);
        assertThat(one.d50IntervalMm().high()).isLessThan(4.7);
        // the bound is the widest spread that leaves 0.2 % outside each end
        assertThat(one.distribution().shareFinerThan(3.15)).isCloseTo(0.002, within(1e-9));
        SieveResult pan = Sieves.analyse(List.of(2.0, 3.15), List.of(List.of(5.0, 0.0, 0.0)));
        assertThat(pan.d50Mm()).isLessThan(2.0);
        SieveResult top = Sieves.analyse(List.of(2.0, 3.15), List.of(List.of(0.0, 0.0, 5.0)));
        assertThat(top.d50Mm()).isGreaterThan(3.15);
    }

    @Test
    void twoClassesGiveABoundThatKeepsTheirShare() {
        SieveResult two = Sieves.analyse(USUAL, List.of(List.of(0.0, 60.0, 40.0, 0.0)));
        assertThat(two.distribution().spreadIsBound()).isTrue();
        assertThat(two.distribution().shareFinerThan(3.15)).isCloseTo(0.6, within(1e-9));
        assertThat(two.distribution().shareFinerThan(2.0)).isLessThan(0.0021);
        assertThat(1 - two.distribution().shareFinerThan(4.5)).isLessThan(0.0021);
        SieveResult traces = Sieves.analyse(USUAL, List.of(List.of(0.0, 0.0, 0.001, 99.999)));
        assertThat(traces.d50Mm()).isBetween(4.5, 9.0);
    }

    @Test
    void aBoundIsLessCertainThanAValue() {
        SieveResult value = Sieves.analyse(USUAL, List.of(List.of(3.0, 45.0, 46.0, 6.0)));
        SieveResult bound = Sieves.analyse(USUAL, List.of(List.of(0.0, 50.0, 50.0, 0.0)));
        assertThat(bound.distribution().lnD50StandardError())
                .isGreaterThan(value.distribution().lnD50StandardError());
    }

    @Test
    void measuredSharesAtAnApertureElseFitted() {
        List<Double> odd = List.of(10.0, 50.0, 35.0, 5.0);
        SieveResult two = Sieves.analyse(USUAL, List.of(odd));
        assertThat(two.shareUnder2MmPercent()).isCloseTo(10, within(1e-9));
        assertThat(two.share2To4MmPercent()).isCloseTo(100 * two.distribution().shareFinerThan(4) - 10, within(1e-9));
        SieveResult four = Sieves.analyse(List.of(1.98, 3.0, 4.0), List.of(odd));
        assertThat(four.shareUnder2MmPercent()).isCloseTo(10, within(1e-9));
        assertThat(four.share2To4MmPercent()).isCloseTo(85, within(1e-9));
        SieveResult other = Sieves.analyse(List.of(1.5, 3.0, 4.5), List.of(odd));
        assertThat(other.shareUnder2MmPercent())
                .isCloseTo(100 * other.distribution().shareFinerThan(2), within(1e-9));
    }

    @Test
    void everySampleHasTheSameWeight() {
        SieveResult small =
                Sieves.analyse(USUAL, List.of(List.of(4.0, 45.0, 46.0, 5.0), List.of(8.0, 50.0, 38.0, 4.0)));
        SieveResult large =
                Sieves.analyse(USUAL, List.of(List.of(40.0, 450.0, 460.0, 50.0), List.of(8.0, 50.0, 38.0, 4.0)));
        assertThat(large.d50Mm()).isCloseTo(small.d50Mm(), within(1e-9));
        assertThat(large.sharesPercent().get(0)).isCloseTo(6, within(1e-9));
    }

    @Test
    void samplesThatAgreeNarrowAndSamplesThatDifferWidenTheInterval() {
        List<Double> middle = List.of(5.0, 45.0, 44.0, 6.0);
        double one = error(List.of(middle));
        double three = error(List.of(middle, middle, middle));
        double apart = error(List.of(List.of(14.0, 56.0, 27.0, 3.0), middle, List.of(1.0, 30.0, 57.0, 12.0)));
        assertThat(three).isLessThan(one);
        assertThat(apart).isGreaterThan(three);
        // one careful sample gives d50 to about 3 to 4 %, by assumption
        assertThat(one).isBetween(0.02, 0.05);
        assertThat(three).isGreaterThanOrEqualTo(SieveErrors.APERTURE_ERROR);
    }

    private static double error(List<List<Double>> samples) {
        return Sieves.analyse(USUAL, samples).distribution().lnD50StandardError();
    }

    @Test
    void theInterpolatedMedianIsCloseToTheFittedOne() {
        SieveResult inside = Sieves.analyse(USUAL, List.of(List.of(4.0, 45.0, 46.0, 5.0)));
        assertThat(inside.d50InterpolatedMm()).isCloseTo(inside.d50Mm(), within(0.1));
        SieveResult outside = Sieves.analyse(USUAL, List.of(List.of(60.0, 30.0, 9.0, 1.0)));
        assertThat(outside.d50InterpolatedMm()).isNull();
    }

    @Test
    void refusesWhatCannotBeSieved() {
        assertThatThrownBy(() -> Sieves.analyse(List.of(2.0), List.of(List.of(1.0, 1.0))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sieves.analyse(List.of(0.0, 2.0), List.of(List.of(1.0, 1.0, 1.0))))
                .hasMessageContaining("above 0");
        assertThatThrownBy(() -> Sieves.analyse(USUAL, List.of())).hasMessageContaining("sample");
        assertThatThrownBy(() -> Sieves.analyse(List.of(2.0, 2.0), List.of(List.of(1.0, 1.0, 1.0))))
                .hasMessageContaining("rise");
        assertThatThrownBy(() -> Sieves.analyse(List.of(3.0, 2.0), List.of(List.of(1.0, 1.0, 1.0))))
                .hasMessageContaining("rise");
        assertThatThrownBy(() -> Sieves.analyse(USUAL, List.of(List.of(1.0, 1.0, 1.0))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sieves.analyse(USUAL, List.of(List.of(0.0, 0.0, 0.0, 0.0))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sieves.analyse(USUAL, List.of(List.of(1.0, -1.0, 3.0, 0.0))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** An aperture within 1.5 % of 2 or 4 mm counts as it: the share is measured, not fitted. */
    @ParameterizedTest
    @CsvSource({"1.969, false", "1.971, true", "2.0, true", "2.029, true", "2.031, false"})
    void anApertureWithinOneAndAHalfPercentCountsAsTheDiameter(double finest, boolean measured) {
        SieveResult found = Sieves.analyse(List.of(finest, 3.0, 4.5), List.of(List.of(10.0, 50.0, 35.0, 5.0)));
        assertThat(found.shareUnder2MmPercent() == 10).isEqualTo(measured);
        SieveResult coarse = Sieves.analyse(List.of(1.0, 3.0, 2 * finest), List.of(List.of(1.0, 50.0, 35.0, 14.0)));
        double under4 = coarse.shareUnder2MmPercent() + coarse.share2To4MmPercent();
        assertThat(Math.abs(under4 - 86) < 1e-9).isEqualTo(measured);
    }

    @Test
    void figuresOfTheTradeAreThoseOfTheFit() {
        SieveResult found = Sieves.analyse(USUAL, List.of(List.of(4.0, 45.0, 46.0, 5.0)));
        SizeDistribution fit = found.distribution();
        assertThat(found.indices())
                .isEqualTo(new SieveResult.Indices(fit.spreadIndexPercent(), fit.sgn(), fit.uniformityIndex()));
        assertThat(found.d16Mm()).isEqualTo(fit.quantileMm(0.16));
        assertThat(found.d84Mm()).isEqualTo(fit.quantileMm(0.84));
        assertThat(found.d50Mm()).isEqualTo(fit.d50Mm());
        assertThat(Math.log(found.d50IntervalMm().high() / fit.d50Mm()))
                .isCloseTo(1.6449 * fit.lnD50StandardError(), within(1e-9));
        assertThat(Math.log(fit.d50Mm() / found.d50IntervalMm().low()))
                .isCloseTo(1.6449 * fit.lnD50StandardError(), within(1e-9));
        assertThat(found.samples()).isEqualTo(1);
    }

    /** Two humps: the largest difference between a measured and a fitted share, by hand. */
    @Test
    void theWorstResidualIsTheLargestDifferenceOfAShare() {
        SieveResult found = Sieves.analyse(USUAL, List.of(List.of(30.0, 10.0, 55.0, 5.0)));
        double worst = 0;
        double before = 0;
        for (int i = 0; i < 4; i++) {
            double finer = i == 3 ? 1 : found.distribution().shareFinerThan(USUAL.get(i));
            worst = Math.max(worst, Math.abs(found.sharesPercent().get(i) - 100 * (finer - before)));
            before = finer;
        }
        assertThat(found.worstResidualPercent()).isGreaterThan(5).isCloseTo(worst, within(1e-9));
    }
}
