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
            assertThat(found.distribution().d50Mm()).isCloseTo(d50, within(1e-5 * d50));
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

    /** At an aperture, or read between two: 60 % pass 3.15 mm, 95 % pass 4.5 mm. Never one end of each kind. */
    @Test
    void sharesAreMeasuredWhereTheSievesEncloseThemElseFitted() {
        List<Double> odd = List.of(10.0, 50.0, 35.0, 5.0);
        SieveResult inside = Sieves.analyse(USUAL, List.of(odd));
        assertThat(inside.shareUnder2MmPercent()).isCloseTo(10, within(1e-9));
        assertThat(inside.share2To4MmPercent()).isCloseTo(50 + 35 * 0.85 / 1.35, within(1e-9));
        assertThat(inside.readFrom().share2To4MmPercent()).isEqualTo(SieveReading.CURVE);
        SieveResult four = Sieves.analyse(List.of(1.98, 3.0, 4.0), List.of(odd));
        assertThat(four.shareUnder2MmPercent()).isCloseTo(10, within(1e-9));
        assertThat(four.share2To4MmPercent()).isCloseTo(85, within(1e-9));
        SieveResult between = Sieves.analyse(List.of(1.5, 3.0, 4.5), List.of(odd));
        assertThat(between.shareUnder2MmPercent()).isCloseTo(10 + 50.0 / 3, within(1e-9));
        SieveResult open = Sieves.analyse(List.of(2.0, 3.0, 3.5), List.of(odd));
        SizeDistribution fit = open.distribution();
        assertThat(open.readFrom().shareUnder2MmPercent()).isEqualTo(SieveReading.CURVE);
        assertThat(open.shareUnder2MmPercent()).isCloseTo(10, within(1e-9));
        assertThat(open.readFrom().share2To4MmPercent()).isEqualTo(SieveReading.FIT);
        assertThat(open.share2To4MmPercent())
                .isCloseTo(100 * (fit.shareFinerThan(4) - fit.shareFinerThan(2)), within(1e-9));
        SieveResult coarse = Sieves.analyse(List.of(2.5, 3.0, 4.5), List.of(odd));
        assertThat(coarse.readFrom().shareUnder2MmPercent()).isEqualTo(SieveReading.FIT);
        assertThat(coarse.shareUnder2MmPercent())
                .isCloseTo(100 * coarse.distribution().shareFinerThan(2), within(1e-9));
        assertThat(coarse.readFrom().share2To4MmPercent()).isEqualTo(SieveReading.FIT);
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

    /** An aperture within 1.5 % of 2 or 4 mm counts as it: outside the sieves the share is fitted. */
    @ParameterizedTest
    @CsvSource({"2.0, CURVE", "2.029, CURVE", "2.031, FIT"})
    void anApertureWithinOneAndAHalfPercentCountsAsTheDiameter(double finest, SieveReading from) {
        SieveResult found = Sieves.analyse(List.of(finest, 3.0, 4.5), List.of(List.of(10.0, 50.0, 35.0, 5.0)));
        assertThat(found.shareUnder2MmPercent() == 10).isEqualTo(from == SieveReading.CURVE);
        assertThat(found.readFrom().shareUnder2MmPercent()).isEqualTo(from);
    }

    @ParameterizedTest
    @CsvSource({"3.938, FIT", "3.942, CURVE", "4.0, CURVE"})
    void andSoDoesOneNearFourMillimetres(double coarsest, SieveReading from) {
        SieveResult found = Sieves.analyse(List.of(2.0, 3.0, coarsest), List.of(List.of(1.0, 50.0, 35.0, 14.0)));
        assertThat(Math.abs(found.share2To4MmPercent() - 85) < 1e-9).isEqualTo(from == SieveReading.CURVE);
        assertThat(found.readFrom().share2To4MmPercent()).isEqualTo(from);
    }

    /** 4, 49 and 95 % pass 2, 3.15 and 4.5 mm. */
    @Test
    void figuresOfTheTradeAreReadOnTheCurve() {
        SieveResult found = Sieves.analyse(USUAL, List.of(List.of(4.0, 45.0, 46.0, 5.0)));
        double d16 = 2 + 1.15 * 12 / 45;
        double d50 = 3.15 + 1.35 / 46;
        double d84 = 3.15 + 1.35 * 35 / 46;
        assertThat(found.d16Mm()).isCloseTo(d16, within(1e-9));
        assertThat(found.d50Mm()).isCloseTo(d50, within(1e-9));
        assertThat(found.d84Mm()).isCloseTo(d84, within(1e-9));
        assertThat(found.indices().spreadIndexPercent()).isCloseTo(50 * (d84 - d16) / d50, within(1e-9));
        assertThat(found.indices().sgn()).isCloseTo(100 * d50, within(1e-9));
        assertThat(found.indices().uniformityIndex())
                .isCloseTo(100 * (2 + 1.15 / 45) / (3.15 + 1.35 * 41 / 46), within(1e-9));
        double error = found.distribution().lnD50StandardError();
        assertThat(Math.log(found.d50IntervalMm().high() / d50)).isCloseTo(1.6449 * error, within(1e-4 * error));
        assertThat(Math.log(d50 / found.d50IntervalMm().low())).isCloseTo(1.6449 * error, within(1e-4 * error));
        assertThat(found.samples()).isEqualTo(1);
    }

    /** Share passing the finest sieve at, above, below 5 and 16 %; on the coarsest at, above, below 10 and 16 %. */
    @ParameterizedTest
    @CsvSource({
        "5, 10, CURVE, CURVE",
        "5.01, 10, CURVE, FIT",
        "4.99, 10, CURVE, CURVE",
        "5, 10.01, CURVE, FIT",
        "5, 9.99, CURVE, CURVE",
        "16, 10, CURVE, FIT",
        "16.01, 10, FIT, FIT",
        "5, 16, CURVE, FIT",
        "5, 16.01, FIT, FIT"
    })
    void anIndexIsReadOnTheCurveWhenAllItsSizesAreEnclosed(
            double fines, double coarse, SieveReading spread, SieveReading uniformity) {
        SieveResult found = Sieves.analyse(USUAL, List.of(List.of(fines, 45.0, 55.0 - fines - coarse, coarse)));
        SizeDistribution fit = found.distribution();
        assertThat(found.readFrom().spreadIndexPercent()).isEqualTo(spread);
        assertThat(found.readFrom().uniformityIndex()).isEqualTo(uniformity);
        assertThat(found.indices().spreadIndexPercent() == fit.spreadIndexPercent())
                .isEqualTo(spread == SieveReading.FIT);
        assertThat(found.indices().uniformityIndex() == fit.uniformityIndex())
                .isEqualTo(uniformity == SieveReading.FIT);
        assertThat(found.readFrom().d16Mm()).isEqualTo(fines <= 16 ? SieveReading.CURVE : SieveReading.FIT);
        assertThat(found.readFrom().d84Mm()).isEqualTo(coarse <= 16 ? SieveReading.CURVE : SieveReading.FIT);
        assertThat(found.readFrom().d50Mm()).isEqualTo(SieveReading.CURVE);
    }

    /** A size of the fit does not contradict the sieves: 30 % pass 2 mm, so d16 is finer than 2 mm. */
    @Test
    void aFittedSizeLiesBeyondTheSieveThatItIsBeyond() {
        SieveResult humps = Sieves.analyse(USUAL, List.of(List.of(17.0, 3.0, 75.0, 5.0)));
        assertThat(humps.distribution().quantileMm(0.16)).isGreaterThan(2);
        assertThat(humps.readFrom().d16Mm()).isEqualTo(SieveReading.FIT);
        assertThat(humps.d16Mm()).isEqualTo(2);
    }

    /** 0.2 % of the mass in a class is empty: with two classes there is no curve to read between. */
    @ParameterizedTest
    @CsvSource({"0.1, FIT", "0.2, FIT", "0.21, CURVE"})
    void withTwoClassesTheSizesAreThoseOfTheFit(double third, SieveReading from) {
        SieveResult found = Sieves.analyse(USUAL, List.of(List.of(0.0, 60.0 - third, 40.0, third)));
        assertThat(found.readFrom().d50Mm()).isEqualTo(from);
        assertThat(found.d50Mm() == found.distribution().d50Mm()).isEqualTo(from == SieveReading.FIT);
        assertThat(found.readFrom().shareUnder2MmPercent()).isEqualTo(SieveReading.CURVE);
        assertThat(found.readFrom().share2To4MmPercent()).isEqualTo(from);
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
