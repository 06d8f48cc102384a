package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.BACK_AND_FORTH;
import static org.evenfall.trays.TestFields.at;
import static org.evenfall.trays.TestFields.lever;
import static org.evenfall.trays.TestFields.shaped;
import static org.evenfall.trays.TestFields.stated;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResponseModelTest {

    private static ResponseModel model(List<Lever> levers, int skipped, AdviceInput.DoneTest... tests) {
        Uniformity now = tests[tests.length - 1].evenness();
        return new ResponseModel(List.of(tests), now, Diagnosis.of(now).orElseThrow(), levers, BACK_AND_FORTH, skipped);
    }

    private static ResponseModel model(Widening widening, AdviceInput.DoneTest... tests) {
        return model(List.of(lever(widening)), 0, tests);
    }

    /** Without a move the model gives back the reading, within what it may be wrong by. */
    @Test
    void withoutAMoveTheReadingIsThatOfTheTest() {
        Uniformity test = shaped(3, 4, 20, -6);
        ExpectedCv expected = model(Widening.HIGHER, at(10, test)).expected(new int[] {0});
        assertThat(expected.percent()).isCloseTo(test.cvPercent(), within(1.5));
        assertThat(expected.intervalPercent().contains(test.cvPercent())).isTrue();
        assertThat(expected.intervalPercent().width()).isBetween(5.0, 17.0);
    }

    /** Its square is that of the field, shapes and the rest. */
    @Test
    void withoutAMoveTheSquareIsThatOfTheField() {
        Uniformity test = shaped(2, 12, 20, -6);
        double fieldPercent = test.field().medianPercent();
        assertThat(Math.sqrt(model(Widening.HIGHER, at(10, test)).squareAhead(new int[] {0})))
                .isCloseTo(fieldPercent, within(0.4));
    }

    /** Towards wider the centre loses: the CV falls, further than midway it rises again. */
    @Test
    void aCentreHeavyTestImprovesTowardsWider() {
        ResponseModel model = model(Widening.HIGHER, at(10, shaped(2, 0, 20, 0)));
        double now = model.squareAhead(new int[] {0});
        assertThat(model.squareAhead(new int[] {2})).isLessThan(0.75 * now);
        assertThat(model.squareAhead(new int[] {-2})).isGreaterThan(1.5 * now);
        assertThat(model.squareAhead(new int[] {12})).isGreaterThan(now);
        assertThat(model.expected(new int[] {2}).percent())
                .isLessThan(model.expected(new int[] {0}).percent());
        assertThat(model.expectedField(new int[] {2}).percent())
                .isLessThan(model.expectedField(new int[] {0}).percent())
                .isLessThan(model.expected(new int[] {2}).percent());
    }

    /** One test contains nothing about the direction: the prior remains; one in twenty throws past the neighbour. */
    @ParameterizedTest
    @CsvSource({"HIGHER, 0.9, 0.86", "LOWER, 0.1, 0.14", "UNKNOWN, 0.5, 0.5"})
    void beforeASecondTestTheOwnersDirectionIsBelieved(Widening widening, double widerUp, double empties) {
        ResponseModel model = model(widening, at(10, shaped(2, 0, 15, 0)));
        assertThat(model.probabilityWiderUp(0)).isCloseTo(widerUp, within(1e-9));
        assertThat(model.probabilityEmptiesMiddle(0)).isCloseTo(empties, within(1e-9));
        assertThat(model.probabilityFolded()).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void twoTestsTeachTheDirection() {
        AdviceInput.DoneTest last = at(13, shaped(2, 0, 3, 0));
        assertThat(model(Widening.UNKNOWN, at(10, shaped(2, 0, 18, 0)), last).probabilityEmptiesMiddle(0))
                .isGreaterThan(0.95);
        assertThat(model(Widening.UNKNOWN, at(16, shaped(2, 0, 18, 0)), last).probabilityEmptiesMiddle(0))
                .isLessThan(0.05);
    }

    /** One lever that answers the other way round is rather typed wrongly; where two do, the throw is rather too far. */
    @Test
    void aThrowPastTheNeighbourIsRecognised() {
        Lever first = new Lever("A", "", 0, 20, 1, Widening.HIGHER);
        Lever second = new Lever("B", "", 0, 20, 1, Widening.HIGHER);
        AdviceInput.DoneTest start = two(10, 10, 5);
        AdviceInput.DoneTest afterA = two(14, 10, 25);
        AdviceInput.DoneTest afterB = two(14, 14, 45);
        ResponseModel one = model(List.of(first, second), 0, start, afterA);
        assertThat(one.probabilityEmptiesMiddle(0)).isLessThan(0.05);
        assertThat(one.probabilityFolded()).isBetween(0.2, 0.4);
        ResponseModel both = model(List.of(first, second), 0, start, afterA, afterB);
        assertThat(both.probabilityFolded()).isGreaterThan(0.7);
        assertThat(both.probabilityWiderUp(0)).isGreaterThan(0.7);
    }

    private static AdviceInput.DoneTest two(double a, double b, double centre) {
        return new AdviceInput.DoneTest(shaped(2, 0, centre, 0), Map.of("A", a, "B", b), 1.0);
    }

    /** Far from anything expected there is still an answer. */
    @Test
    void aTestFarOffStillHasAnAnswer() {
        ExpectedCv expected =
                model(Widening.HIGHER, at(10, stated(1000, 1, 0, -2000, 0))).expected(new int[] {-1});
        assertThat(expected.percent()).isFinite().isPositive();
        assertThat(expected.intervalPercent().high()).isFinite();
    }

    /** Two levers: the one that was moved is known better than the one that was not. */
    @Test
    void theLeverThatWasMovedIsKnownBetter() {
        Lever first = new Lever("A", "", 0, 20, 1, Widening.HIGHER);
        Lever second = new Lever("B", "", 0, 20, 1, Widening.HIGHER);
        ResponseModel model = model(List.of(first, second), 0, two(10, 10, 28), two(14, 10, 8));
        double spreadFirst = model.expected(new int[] {4, 0}).intervalPercent().width();
        double spreadSecond = model.expected(new int[] {0, 4}).intervalPercent().width();
        assertThat(spreadFirst).isLessThan(spreadSecond);
    }

    /** What was not looked at on the machine makes the forecast less certain. */
    @Test
    void skippedPartsWidenTheForecast() {
        AdviceInput.DoneTest test = at(10, shaped(2, 0, 15, 0));
        List<Lever> levers = List.of(lever(Widening.HIGHER));
        double none =
                model(levers, 0, test).expected(new int[] {2}).intervalPercent().width();
        double six =
                model(levers, 6, test).expected(new int[] {2}).intervalPercent().width();
        assertThat(six).isGreaterThan(none + 0.5);
    }

    /** Of a test without noise the even shapes and the residual are its whole CV². */
    @Test
    void shapesAndResidualAddUpToTheCv() {
        Uniformity test = shaped(1e-6, 7, 20, -9);
        Diagnosis shape = Diagnosis.of(test).orElseThrow();
        EvenShapeVariance variance = EvenShapeVariance.of(test, shape, BACK_AND_FORTH);
        assertThat(variance.cvSquare(
                        shape.centre().amplitudePercent(), shape.quarter().amplitudePercent()))
                .isCloseTo(test.cvPercent() * test.cvPercent(), within(1e-6));
        assertThat(variance.residualVariance()).isBetween(0.1, 0.3 * test.cvPercent() * test.cvPercent());
        assertThat(residual(stated(10, 10, 0, 20, 0))).isZero();
        // shapes that explain more than the CV leave nothing, not less
        assertThat(residual(stated(10, 1, 0, 40, 0))).isZero();
        assertThat(new EvenShapeVariance(0, 0, -1, 1).cvSquare(1, 1)).isEqualTo(1);
    }

    private static double residual(Uniformity test) {
        return EvenShapeVariance.of(test, Diagnosis.of(test).orElseThrow(), BACK_AND_FORTH)
                .residualVariance();
    }
}
