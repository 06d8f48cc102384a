package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.BACK_AND_FORTH;
import static org.evenfall.trays.TestFields.LEVER;
import static org.evenfall.trays.TestFields.at;
import static org.evenfall.trays.TestFields.lever;
import static org.evenfall.trays.TestFields.shaped;
import static org.evenfall.trays.TestFields.stated;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResponseModelTest {

    private static final ShapeCurve LINE = ShapeCurves.broad().get(0);

    private static ResponseModel model(Widening widening, AdviceInput.DoneTest... tests) {
        return new ResponseModel(List.of(tests), List.of(lever(widening)), ShapeCurves.broad(), BACK_AND_FORTH);
    }

    /** Without a move the model gives back the machine's own CV, within what its curves may be wrong by. */
    @Test
    void withoutAMoveTheCvIsThatOfTheTest() {
        Uniformity test = shaped(3, 4, 20, -6);
        ExpectedCv expected = model(Widening.HIGHER, at(10, test)).expected(new int[] {0});
        assertThat(expected.percent()).isCloseTo(test.cv().machinePercent(), within(1.0));
        assertThat(expected.intervalPercent().contains(test.cv().machinePercent()))
                .isTrue();
        assertThat(expected.intervalPercent().width()).isBetween(2.0, 15.0);
    }

    /** Towards wider the centre loses: the CV falls, further than half-way it rises again. */
    @Test
    void aCentreHeavyTestImprovesTowardsWider() {
        ResponseModel model = model(Widening.HIGHER, at(10, shaped(2, 0, 15, 0)));
        double now = model.expectedSquare(new int[] {0});
        assertThat(model.expectedSquare(new int[] {2})).isLessThan(0.7 * now);
        assertThat(model.expectedSquare(new int[] {-2})).isGreaterThan(1.5 * now);
        assertThat(model.expectedSquare(new int[] {12})).isGreaterThan(now);
        // the reading has the noise of 2 % in it, and its median is near the root of the mean square
        double reading = Math.sqrt(model.expectedSquare(new int[] {2}) + 4);
        assertThat(model.expected(new int[] {2}).percent()).isBetween(0.7 * reading, 1.05 * reading);
    }

    /** One test contains nothing about the direction: the prior remains, 0.9 for the owner. */
    @ParameterizedTest
    @CsvSource({"HIGHER, 0.9", "LOWER, 0.1", "UNKNOWN, 0.5"})
    void beforeASecondTestTheOwnersDirectionIsBelieved(Widening widening, double widerUp) {
        assertThat(model(widening, at(10, shaped(2, 0, 15, 0))).probabilityWiderUp(0))
                .isCloseTo(widerUp, within(0.012));
    }

    @Test
    void twoTestsTeachTheDirection() {
        AdviceInput.DoneTest last = at(13, shaped(2, 0, 3, 0));
        assertThat(model(Widening.UNKNOWN, at(10, shaped(2, 0, 18, 0)), last).probabilityWiderUp(0))
                .isGreaterThan(0.95);
        assertThat(model(Widening.UNKNOWN, at(16, shaped(2, 0, 18, 0)), last).probabilityWiderUp(0))
                .isLessThan(0.05);
    }

    /** Beyond every curve, 30 squared standard errors off, the whole grid is used rather than none of it. */
    @Test
    void aTestFarOffEveryCurveStillHasAnAnswer() {
        ExpectedCv expected =
                model(Widening.HIGHER, at(10, stated(1000, 1, 0, -2000, 0))).expected(new int[] {-1});
        assertThat(expected.percent()).isFinite().isPositive();
        assertThat(expected.intervalPercent().high()).isFinite();
    }

    /** Two levers: the one that was moved is known better than the one that was not. */
    @Test
    void whatALeverDoesToTheQuarterPointsIsLearnt() {
        Lever first = new Lever("A", "", 0, 20, 1, Widening.HIGHER);
        Lever second = new Lever("B", "", 0, 20, 1, Widening.HIGHER);
        Map<String, Double> before = Map.of("A", 10.0, "B", 10.0);
        Map<String, Double> after = Map.of("A", 14.0, "B", 10.0);
        ResponseModel model = new ResponseModel(
                List.of(
                        new AdviceInput.DoneTest(shaped(1, 0, 8, 12), before, null),
                        new AdviceInput.DoneTest(shaped(1, 0, 0, 12), after, null)),
                List.of(first, second),
                ShapeCurves.broad(),
                BACK_AND_FORTH);
        double spreadFirst = model.expected(new int[] {4, 0}).intervalPercent().width();
        double spreadSecond = model.expected(new int[] {0, 4}).intervalPercent().width();
        assertThat(spreadFirst).isLessThan(spreadSecond);
    }

    @Test
    void anObservationCarriesItsVarianceAndItsDistance() {
        Lever halfSteps = new Lever(LEVER, "", 0, 20, 0.5, Widening.HIGHER);
        Lever unknown = new Lever("other", "", 0, 20, 1, Widening.HIGHER);
        Observation observation = Observation.of(
                        at(8, stated(20, 3, 0, -25, 7)), Map.of(LEVER, 10.0), List.of(halfSteps, unknown))
                .orElseThrow();
        assertThat(observation.centrePercent()).isEqualTo(-25);
        // standard error 1, curve error 2 + 0.08 × 25
        assertThat(observation.centreVariance()).isCloseTo(1 + 16, within(1e-12));
        assertThat(observation.quarterPercent()).isEqualTo(7);
        assertThat(observation.quarterVariance()).isCloseTo(1 + 4, within(1e-12));
        assertThat(observation.steps()).containsExactly(-4, 0);
        assertThat(Observation.of(at(8, stated(20, 3, 0, -25, 7)), Map.of(), List.of(halfSteps))
                        .orElseThrow()
                        .steps())
                .containsExactly(0);
    }

    /** The quarter offset is averaged out: the weight is that of a numerical integral over its prior. */
    @Test
    void theWeightIsTheIntegralOverTheQuarterOffset() {
        List<Observation> tests = List.of(
                new Observation(12, 9, 5, 4, new double[] {0}), new Observation(3, 16, -2, 6, new double[] {3}));
        LeverResponse one = new LeverResponse(new double[] {2}, new double[] {-1});
        LeverResponse other = new LeverResponse(new double[] {1}, new double[] {0.5});
        double ratio = Hypothesis.weighted(LINE, -6, one, tests).logWeight()
                - Hypothesis.weighted(LINE, -4, other, tests).logWeight();
        double expected = Math.log(integral(-6, 2, -1) / integral(-4, 1, 0.5));
        assertThat(ratio).isCloseTo(expected, within(1e-6));
        double mean = mean(-6, 2, -1);
        assertThat(Hypothesis.weighted(LINE, -6, one, tests).quarterOffset()).isCloseTo(mean, within(1e-6));
    }

    private static double density(double offset, double place, double slope, double quarterSlope) {
        // the straight line has −1.5 % a degree in the centre and no quarter points
        double chi = square((12 + 1.5 * place) / 3)
                + square((3 + 1.5 * (place + 3 * slope)) / 4)
                + square(5 - offset) / 4
                + square(-2 - 3 * quarterSlope - offset) / 6
                + square(offset / 8);
        return Math.exp(-chi / 2);
    }

    private static double integral(double place, double slope, double quarterSlope) {
        return sum(offset -> density(offset, place, slope, quarterSlope));
    }

    private static double mean(double place, double slope, double quarterSlope) {
        return sum(offset -> offset * density(offset, place, slope, quarterSlope))
                / integral(place, slope, quarterSlope);
    }

    private static double sum(DoubleUnaryOperator function) {
        double sum = 0;
        for (double offset = -60; offset <= 60; offset += 0.01) {
            sum += 0.01 * function.applyAsDouble(offset);
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void aMoveGoesAlongTheCurveAndTurnsTheQuarterPoints() {
        Hypothesis hypothesis =
                new Hypothesis(LINE, -4, new LeverResponse(new double[] {2, -1}, new double[] {0.5, 3}), 1, 0);
        EvenShapeVariance variance = new EvenShapeVariance(0.5, 0.25, 0.125, 7);
        // place −4 + 2·2 − 1·1 = −1: centre 1.5; quarter 1 + 2·0.5 + 1·3 = 5
        assertThat(hypothesis.cvSquareAfter(new int[] {2, 1}, variance))
                .isCloseTo(7 + 0.5 * 2.25 + 0.25 * 25 + 2 * 0.125 * 7.5, within(1e-12));
    }

    /** Of a test without noise the even shapes and the residual are its whole CV². */
    @Test
    void shapesAndResidualAddUpToTheCv() {
        Uniformity test = shaped(1e-6, 7, 20, -9);
        EvenShapeVariance variance = EvenShapeVariance.of(test, BACK_AND_FORTH);
        Diagnosis shape = Diagnosis.of(test).orElseThrow();
        assertThat(variance.cvSquare(
                        shape.centre().amplitudePercent(), shape.quarter().amplitudePercent()))
                .isCloseTo(test.cvPercent() * test.cvPercent(), within(1e-6));
        assertThat(variance.residualVariance()).isBetween(0.1, 0.3 * test.cvPercent() * test.cvPercent());
        Uniformity noisy = stated(10, 10, 0, 20, 0);
        assertThat(EvenShapeVariance.of(noisy, BACK_AND_FORTH).residualVariance())
                .isZero();
        // shapes that explain more than the CV leave nothing, not less
        assertThat(EvenShapeVariance.of(stated(10, 1, 0, 40, 0), BACK_AND_FORTH).residualVariance())
                .isZero();
        assertThat(new EvenShapeVariance(0, 0, -1, 1).cvSquare(1, 1)).isZero();
    }

    /** The fixed sample has the median, spread and direction of the prior. */
    @Test
    void theSampleHasThePrior() {
        List<LeverResponse> sample =
                LeverResponse.prior(List.of(lever(Widening.HIGHER), lever(Widening.LOWER), lever(Widening.UNKNOWN)));
        double n = sample.size();
        assertThat(n).isEqualTo(192);
        double[] owner = {0.9, 0.1, 0.5};
        for (int j = 0; j < 3; j++) {
            int lever = j;
            double logMean = sample.stream()
                            .mapToDouble(one -> Math.log(Math.abs(one.slopeDeg()[lever])))
                            .sum()
                    / n;
            double logSquare = sample.stream()
                            .mapToDouble(one -> square(Math.log(Math.abs(one.slopeDeg()[lever])) - logMean))
                            .sum()
                    / n;
            double up = sample.stream().filter(one -> one.slopeDeg()[lever] > 0).count() / n;
            double quarterMean = sample.stream()
                            .mapToDouble(one -> one.quarterSlope()[lever])
                            .sum()
                    / n;
            double quarterSquare = sample.stream()
                            .mapToDouble(one -> square(one.quarterSlope()[lever]))
                            .sum()
                    / n;
            assertThat(Math.exp(logMean)).isCloseTo(2, within(0.1));
            assertThat(Math.sqrt(logSquare)).isCloseTo(0.55, within(0.04));
            assertThat(up).isCloseTo(owner[j], within(0.015));
            assertThat(quarterMean).isCloseTo(0, within(0.06));
            assertThat(Math.sqrt(quarterSquare)).isCloseTo(0.8, within(0.08));
        }
    }

    /** The Halton sequence has forty dimensions: with more than thirteen levers they share them. */
    @Test
    void manyLeversShareTheDimensions() {
        List<Lever> many = java.util.Collections.nCopies(20, lever(Widening.HIGHER));
        assertThat(LeverResponse.prior(many).get(0).slopeDeg()).hasSize(20);
        assertThat(LeverResponse.prior(List.of())).hasSize(192);
    }
}
