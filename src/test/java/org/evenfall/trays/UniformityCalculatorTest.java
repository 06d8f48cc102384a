package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.catches;
import static org.evenfall.trays.TestFields.list;
import static org.evenfall.trays.TestFields.uniformity;

import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class UniformityCalculatorTest {

    private static final Offset<Double> TINY = within(1e-9);

    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/trays/coefficient-of-variation.csv", numLinesToSkip = 1)
    void cvAsPublished(String values, double cvPercent, double tolerance, String source) {
        assertThat(source).isNotBlank();
        List<Double> numbers =
                List.of(values.split(" ")).stream().map(Double::valueOf).toList();
        assertThat(UniformityCalculator.cvPercent(numbers)).isCloseTo(cvPercent, within(tolerance));
    }

    /** Exact: cosines and sines on seven trays at 0, ±W/6, ±W/3, ±W/2, s with n − 1 over the mean of the seven. */
    @Test
    void cvOfPureShapes() {
        assertThat(cvOf(turn -> 1 + 0.2 * Math.cos(2 * turn))).isCloseTo(16.5073, within(5e-5));
        assertThat(cvOf(turn -> 1 + 0.2 * Math.cos(6 * turn))).isCloseTo(22.0097, within(5e-5));
        assertThat(cvOf(turn -> 1 + 0.2 * Math.sin(turn))).isCloseTo(16.3299, within(5e-5));
        assertThat(cvOf(turn -> 1 + 0.3 * Math.cos(12 * turn))).isCloseTo(0, TINY);
    }

    private static double cvOf(DoubleUnaryOperator field) {
        return UniformityCalculator.cvPercent(TestFields.places(7).stream()
                .map(x -> field.applyAsDouble(Math.PI * x / TestFields.WIDTH_M))
                .toList());
    }

    @Test
    void aCvNeedsTwoValuesAndAMeanAboveZero() {
        for (List<Double> values : List.of(list(0, 0), list(-1, 0.5), list(3), list())) {
            assertThatThrownBy(() -> UniformityCalculator.cvPercent(values))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(UniformityCalculator.cvPercent(list(1, 3))).isCloseTo(100 * Math.sqrt(2) / 2, TINY);
    }

    /** Asymmetric, so that left, right, centre and quarter points all differ; by hand, mean 10. */
    @Test
    void contrastsAreSigned() {
        Uniformity test = uniformity(8, 7, 12, 13, 14, 9, 7);
        assertThat(test.catches().meanG()).isCloseTo(10, TINY);
        // left 27/3 = 9, right 30/3 = 10
        assertThat(test.contrasts().leftRightPercent()).isCloseTo(-10, TINY);
        // centre 39/3 = 13, rest 31/4 = 7.75
        assertThat(test.contrasts().centreOverlapPercent()).isCloseTo(52.5, TINY);
        // quarter points (7 + 12 + 14 + 9)/4 = 10.5, rest (8 + 13 + 7)/3
        assertThat(test.contrasts().quarterPointPercent()).isCloseTo(105 - 280 / 3.0, TINY);
        assertThat(test.catches().lowestTray()).isEqualTo(1);
        assertThat(test.catches().highestTray()).isEqualTo(4);
    }

    /** Five trays at the edges of the parts: a hundredth, a quarter, an eighth and three eighths of the width. */
    @Test
    void theEdgesOfTheParts() {
        List<Double> relative = list(1, 2, 4, 8, 16, 32, 64);
        List<Double> places = list(-10.5, -7, -3.5, 0.28, 0.29, 3.49, 10.51);
        Uniformity test = UniformityCalculator.of(
                new TrayCatches(places, relative, 28, DrivingPattern.BACK_AND_FORTH, 0.25, 1, 0.028, 0));
        double percent = 100 / (127 / 7.0);
        // 0.28 m is a hundredth of the width: on neither side
        assertThat(test.contrasts().leftRightPercent()).isCloseTo(percent * (7 / 3.0 - (16 + 32 + 64) / 3.0), TINY);
        // at exactly a quarter a tray belongs to the overlap
        assertThat(test.contrasts().centreOverlapPercent())
                .isCloseTo(percent * ((4 + 8 + 16 + 32) / 4.0 - (1 + 2 + 64) / 3.0), TINY);
        // at exactly an eighth and three eighths it belongs to the quarter points
        assertThat(test.contrasts().quarterPointPercent())
                .isCloseTo(percent * ((1 + 2 + 4) / 3.0 - (8 + 16 + 32 + 64) / 4.0), TINY);
    }

    @Test
    void aPartWithoutTraysCountsAsTheMean() {
        Uniformity left = UniformityCalculator.of(new TrayCatches(
                list(-2, -3, -4, -5, -6),
                list(8, 9, 10, 11, 12),
                28,
                DrivingPattern.BACK_AND_FORTH,
                0.25,
                1,
                0.028,
                0));
        assertThat(left.contrasts().leftRightPercent()).isCloseTo(0, TINY);
        assertThat(left.contrasts().centreOverlapPercent()).isCloseTo(0, TINY);
    }

    @Test
    void rateAndNoiseOfATest() {
        Uniformity test = uniformity(8, 9, 11, 13, 11, 9, 8);
        // trapezium rule: (4 + 9 + 11 + 13 + 11 + 9 + 4) / 6
        assertThat(test.catches().weightedMeanG()).isCloseTo(61 / 6.0, TINY);
        assertThat(test.catches().meanRateKgPerHa()).isCloseTo(10 * 61 / 6.0 / 0.25 / 3, TINY);
        assertThat(test.cv().noisePercent()).isCloseTo(CatchPlans.noisePercent(69 / 7.0, 0.028, 0.1), TINY);
        assertThat(test.trays()).isEqualTo(7);
        assertThat(test.relativePercent().get(3)).isCloseTo(1300 / (69 / 7.0), TINY);
    }

    /** Exact: the trapezium rule gives the middle of a straight line, wherever the trays are and in whatever order. */
    @Test
    void theWeightedMeanIsThatOfTheGround() {
        assertThat(UniformityCalculator.weightedMean(list(-3, 5, -1, 0), list(1, 17, 5, 7)))
                .isCloseTo(9, TINY);
        assertThat(UniformityCalculator.weightedMean(list(0, 1, 4), list(0, 3, 3)))
                .isCloseTo(10.5 / 4, TINY);
        assertThat(UniformityCalculator.weightedMean(list(2, 2, 2), list(1, 2, 6)))
                .isCloseTo(3, TINY);
        assertThat(uniformity(6, 12, 12, 12, 12, 12, 12).catches().weightedMeanG())
                .isCloseTo((3 + 60 + 6) / 6.0, TINY);
    }

    @Test
    void repeatsAreTakenTogetherTrayByTray() {
        Uniformity one = uniformity(8.4, 11, 9, 11.5, 9, 11.2, 9.9);
        Uniformity other = UniformityCalculator.of(new TrayCatches(
                TestFields.places(7),
                list(22.8, 18, 22, 17.6, 22, 17.8, 19.8),
                28,
                DrivingPattern.BACK_AND_FORTH,
                0.25,
                6,
                0.028,
                0.1));
        Uniformity pooled = UniformityCalculator.pooled(List.of(one, other), TestFields.BACK_AND_FORTH);
        for (int i = 0; i < 7; i++) {
            assertThat(pooled.relativePercent().get(i))
                    .isCloseTo(
                            (one.relativePercent().get(i)
                                            + other.relativePercent().get(i))
                                    / 2,
                            TINY);
        }
        double noise = Math.hypot(one.cv().noisePercent(), other.cv().noisePercent()) / 2;
        assertThat(pooled.cv().noisePercent()).isCloseTo(noise, TINY);
        assertThat(pooled.catches().meanG())
                .isCloseTo((one.catches().meanG() + other.catches().meanG()) / 2, TINY);
        assertThat(pooled.catches().meanRateKgPerHa())
                .isCloseTo((one.catches().meanRateKgPerHa() + other.catches().meanRateKgPerHa()) / 2, TINY);
        assertThat(pooled.catches().weightedMeanG())
                .isCloseTo(
                        pooled.catches().meanG()
                                * UniformityCalculator.weightedMean(pooled.positionsM(), pooled.relativePercent())
                                / 100,
                        TINY);
        assertThat(pooled.cvPercent()).isLessThan(Math.min(one.cvPercent(), other.cvPercent()));
        assertThat(pooled.field())
                .isEqualTo(FieldCv.of(
                        pooled.positionsM(),
                        pooled.relativePercent(),
                        TestFields.BACK_AND_FORTH,
                        pooled.cv().noisePercent()));
    }

    @Test
    void theFieldCvIsThatOfTheCatchesWithTheirNoise() {
        for (DrivingPattern driving : List.of(DrivingPattern.BACK_AND_FORTH, DrivingPattern.ROUND_AND_ROUND)) {
            Uniformity test = UniformityCalculator.of(catches(driving, 8, 7, 12, 13, 14, 9, 7));
            assertThat(test.field().medianPercent())
                    .isCloseTo(
                            FieldCv.of(
                                            test.positionsM(),
                                            list(8, 7, 12, 13, 14, 9, 7),
                                            new Tramlines(TestFields.WIDTH_M, driving),
                                            test.cv().noisePercent())
                                    .medianPercent(),
                            within(1e-3));
            assertThat(test.verdict()).isEqualTo(test.field().verdict());
        }
    }

    @Test
    void oneTestAloneStaysAsItIsAndAMissingRateStaysMissing() {
        Uniformity one = uniformity(8, 9, 11, 13, 11, 9, 8);
        Uniformity noRate = TestFields.stated(12, 3, 0, 0, 0);
        assertThat(UniformityCalculator.pooled(List.of(one), TestFields.BACK_AND_FORTH))
                .isSameAs(one);
        assertThat(UniformityCalculator.pooled(List.of(one, noRate), TestFields.BACK_AND_FORTH)
                        .catches()
                        .meanRateKgPerHa())
                .isNull();
        assertThat(UniformityCalculator.pooled(Collections.nCopies(4, one), TestFields.BACK_AND_FORTH)
                        .cv()
                        .noisePercent())
                .isCloseTo(one.cv().noisePercent() / 2, TINY);
    }

    @Test
    void ofEqualTraysTheFirstIsNamed() {
        CatchSummary catches = uniformity(9, 12, 8, 12, 8, 11, 10).catches();
        assertThat(catches.lowestTray()).isEqualTo(2);
        assertThat(catches.highestTray()).isEqualTo(1);
    }

    @Test
    void asManyPlacesAsCatches() {
        assertThatThrownBy(() -> new CatchSummary(list(0, 1), list(100), 1, 1, null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CatchSummary(list(), list(), 1, 1, null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theDrivingPatternReachesTheShapes() {
        assertThat(UniformityCalculator.of(catches(DrivingPattern.ROUND_AND_ROUND, 8, 9, 11, 13, 11, 9, 8))
                        .shapes()
                        .shape(ShapeKind.SIDE_FINE_DETAIL))
                .isEmpty();
    }
}
