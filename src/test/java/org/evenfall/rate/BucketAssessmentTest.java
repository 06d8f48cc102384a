package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.evenfall.rate.BucketAssessment.Batch;
import org.evenfall.rate.BucketAssessment.Catch;
import org.evenfall.rate.BucketAssessment.Wanted;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values made up for the purpose; left and right differ everywhere. */
class BucketAssessmentTest {

    private static final OpeningTable TABLE = new OpeningTable(
            List.of(new FlowPoint(10, 30), new FlowPoint(20, 60), new FlowPoint(30, 100), new FlowPoint(40, 150)));

    /** 80 kg/min from two outlets, 24 m, 10 km/h: 200 kg/ha. */
    private static Wanted wanted(@Nullable OpeningTable table) {
        return new Wanted(80.0, 24.0, 10.0, 2, 5, table);
    }

    private static BucketResult assess(Wanted wanted, Catch... catches) {
        List<BucketResult> results = BucketAssessment.assess(List.of(catches), wanted);
        assertThat(results).hasSameSizeAs(catches);
        return results.get(results.size() - 1);
    }

    @Test
    void flowAndRateOfTwoOutlets() {
        BucketResult result = assess(wanted(null), new Catch(24, 25, 30, List.of(20.0, 21.0), List.of(19.0)));
        assertThat(result.openingLeft()).isEqualTo(24);
        assertThat(result.openingRight()).isEqualTo(25);
        assertThat(result.flow().leftKgPerMin()).isCloseTo(41, within(1e-9));
        assertThat(result.flow().rightKgPerMin()).isCloseTo(38, within(1e-9));
        assertThat(result.flow().totalKgPerMin()).isCloseTo(79, within(1e-9));
        assertThat(result.kgPerHa()).isCloseTo(197.5, within(1e-9));
        assertThat(result.agreement().deviationPercent()).isCloseTo(-1.25, within(1e-9));
        assertThat(result.agreement().leftRightPercent()).isCloseTo(100 * 3 / 39.5, within(1e-9));
        assertThat(result.agreement().repeatSpreadPercent()).isCloseTo(100 / 20.5, within(1e-9));
    }

    /** Two of four outlets are caught: the others are assumed to give the same. */
    @Test
    void theOutletsNotCaughtGiveTheMeanOfThoseCaught() {
        Wanted four = new Wanted(160.0, 24.0, 10.0, 4, 5, null);
        BucketResult result = assess(four, new Catch(24, 25, 30, List.of(20.0), List.of(19.0)));
        assertThat(result.flow().totalKgPerMin()).isCloseTo(156, within(1e-9));
    }

    @Test
    void oneSideAloneCountsForBoth() {
        BucketResult left = assess(wanted(null), new Catch(24, 25, 30, List.of(20.0), List.of()));
        assertThat(left.flow()).isEqualTo(new BucketResult.Flow(40.0, null, 80));
        assertThat(left.agreement().leftRightPercent()).isNull();
        BucketResult right = assess(wanted(null), new Catch(24, 25, 30, List.of(), List.of(21.0)));
        assertThat(right.flow()).isEqualTo(new BucketResult.Flow(null, 42.0, 84));
    }

    /** A machine with one outlet: what is caught is the whole flow, on whichever side it was entered. */
    @Test
    void oneOutletIsTheWholeFlow() {
        Wanted one = new Wanted(40.0, 12.0, 10.0, 1, 5, null);
        BucketResult left = assess(one, new Catch(24, 25, 30, List.of(20.4), List.of()));
        assertThat(left.flow().totalKgPerMin()).isCloseTo(40.8, within(1e-9));
        assertThat(left.kgPerHa()).isCloseTo(204, within(1e-9));
        assertThat(left.agreement().withinTolerance()).isTrue();
        BucketResult right = assess(one, new Catch(24, 25, 30, List.of(), List.of(20.4)));
        assertThat(right.flow().totalKgPerMin()).isCloseTo(40.8, within(1e-9));
        // both sides of one outlet: two half streams
        BucketResult both = assess(one, new Catch(24, 25, 30, List.of(10.4), List.of(9.4)));
        assertThat(both.flow().totalKgPerMin()).isCloseTo(39.6, within(1e-9));
        // the next opening aims at the whole flow
        BucketResult tooMuch = assess(one, new Catch(24, 24, 30, List.of(24.0), List.of()));
        assertThat(tooMuch.next().left()).isCloseTo(20, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // weight left = right in 30 s, within 5 % of 20 kg
        "18.99, false",
        "19.00, true",
        "19.01, true",
        "20.99, true",
        "21.00, true",
        "21.01, false"
    })
    void theRateMayDeviateByTheTolerance(double kg, boolean within) {
        BucketResult result = assess(wanted(null), new Catch(24, 25, 30, List.of(kg), List.of(kg)));
        assertThat(result.agreement().withinTolerance()).isEqualTo(within);
    }

    /** Tolerance 6 %: all together are well within it and the sides differ by less than 5 %, so that one outlet decides. */
    @ParameterizedTest
    @CsvSource({
        "21.19, 20.2, true",
        "21.20, 20.2, true",
        "21.21, 20.2, false",
        "18.81, 19.7, true",
        "18.80, 19.7, true",
        "18.79, 19.7, false"
    })
    void eachOutletMayDeviateByTheTolerance(double kg, double otherKg, boolean within) {
        Wanted six = new Wanted(80.0, 24.0, 10.0, 2, 6, null);
        BucketResult left = assess(six, new Catch(24, 25, 30, List.of(kg), List.of(otherKg)));
        assertThat(left.agreement().leftDeviationPercent()).isCloseTo(100 * (kg / 20 - 1), within(1e-9));
        assertThat(left.agreement().rightDeviationPercent()).isCloseTo(100 * (otherKg / 20 - 1), within(1e-9));
        assertThat(left.agreement().withinTolerance()).isEqualTo(within);
        BucketResult right = assess(six, new Catch(24, 25, 30, List.of(otherKg), List.of(kg)));
        assertThat(right.agreement().withinTolerance()).isEqualTo(within);
    }

    @ParameterizedTest
    @CsvSource({"20.49, true", "20.50, true", "20.51, false", "19.51, true", "19.50, true", "19.49, false"})
    void leftAndRightMayDifferByFivePercent(double leftKg, boolean within) {
        BucketResult result = assess(wanted(null), new Catch(24, 25, 30, List.of(leftKg), List.of(40 - leftKg)));
        assertThat(result.agreement().deviationPercent()).isCloseTo(0, within(1e-9));
        assertThat(result.agreement().withinTolerance()).isEqualTo(within);
    }

    @ParameterizedTest
    @CsvSource({"0.299, true", "0.300, true", "0.301, false"})
    void repeatsMayDifferByThreePercent(double halfSpreadKg, boolean within) {
        List<Double> apart = List.of(20 - halfSpreadKg, 20 + halfSpreadKg);
        List<Double> close = List.of(20.0, 20.1);
        for (BucketResult result : List.of(
                assess(wanted(null), new Catch(24, 25, 30, apart, close)),
                assess(wanted(null), new Catch(24, 25, 30, close, apart)),
                assess(wanted(null), new Catch(24, 25, 30, apart, List.of(20.0))),
                assess(wanted(null), new Catch(24, 25, 30, List.of(20.0), apart)))) {
            assertThat(result.agreement().repeatSpreadPercent()).isCloseTo(10 * halfSpreadKg, within(1e-9));
            assertThat(result.agreement().withinTolerance()).isEqualTo(within);
        }
    }

    @Test
    void withoutAWantedFlowNothingIsWithinToleranceAndNoOpeningFollows() {
        Wanted nothing = new Wanted(null, null, 10.0, 2, 5, TABLE);
        BucketResult result = assess(nothing, new Catch(24, 25, 30, List.of(20.0), List.of(20.0)));
        assertThat(result.agreement()).isEqualTo(new BucketResult.Agreement(null, 0.0, null, false, null, null));
        assertThat(result.next()).isEqualTo(new BucketResult.Next(null, null, null));
        assertThat(result.kgPerHa()).isNull();
        assertThat(result.kgPerHaStandardError()).isNull();
        Wanted noSpeed = new Wanted(null, 24.0, null, 2, 5, TABLE);
        assertThat(assess(noSpeed, new Catch(24, 25, 30, List.of(20.0), List.of()))
                        .kgPerHa())
                .isNull();
    }

    /** One catch: 1.5 % scatter and 0.4 s of 20 s. Both over the root of the number of catches. */
    @Test
    void theStandardErrorFallsWithTheRootOfTheNumberOfCatches() {
        double timing = 0.4 / 20;
        BucketResult one = assess(wanted(null), new Catch(24, 25, 20, List.of(13.0), List.of()));
        assertThat(one.kgPerHaStandardError()).isCloseTo(one.kgPerHa() * Math.hypot(0.015, timing), within(1e-9));
        BucketResult two = assess(wanted(null), new Catch(24, 25, 20, List.of(13.0), List.of(13.0)));
        assertThat(two.kgPerHaStandardError())
                .isCloseTo(two.kgPerHa() * Math.hypot(0.015, timing) / Math.sqrt(2), within(1e-9));
        // repeats that agree by chance prove no less than half a per cent, and the time
        BucketResult equal = assess(wanted(null), new Catch(24, 25, 20, List.of(13.0, 13.0), List.of()));
        assertThat(equal.kgPerHaStandardError())
                .isCloseTo(equal.kgPerHa() * Math.hypot(0.005, timing) / Math.sqrt(2), within(1e-9));
    }

    /** Repeats 6 % apart: 0.06 / 1.128 = 5.3 %, more than 0.4 s of 20 s, which they hold already. */
    @Test
    void theScatterOfTheRepeatsHoldsTheTimingError() {
        BucketResult apart = assess(wanted(null), new Catch(24, 25, 20, List.of(12.61, 13.39), List.of()));
        assertThat(apart.kgPerHaStandardError())
                .isCloseTo(apart.kgPerHa() * 0.06 / 1.128379 / Math.sqrt(2), within(1e-4));
    }

    /** Two catches left, one right, 14 and 12 kg: each mean weighs by its flow. */
    @Test
    void eachSideWeighsByItsFlowAndItsOwnCatches() {
        BucketResult result = assess(wanted(null), new Catch(24, 25, 20, List.of(14.0, 14.0), List.of(12.0)));
        double one = Math.hypot(0.005, 0.02);
        double share = Math.sqrt(14 * 14 / 2.0 + 12 * 12) / 26 * one;
        assertThat(result.kgPerHaStandardError()).isCloseTo(result.kgPerHa() * share, within(1e-9));
    }

    /** 2 % timing and scatter as above, 3 % speed: they add in squares. */
    @Test
    void theErrorOfTheMeasuredSpeedCounts() {
        Wanted measured = new Wanted(80.0, 24.0, 10.0, 2, 5, null, 0.3, null);
        BucketResult result = assess(measured, new Catch(24, 25, 20, List.of(13.0), List.of()));
        assertThat(result.kgPerHaStandardError())
                .isCloseTo(result.kgPerHa() * Math.sqrt(0.015 * 0.015 + 0.02 * 0.02 + 0.03 * 0.03), within(1e-9));
    }

    @Test
    void withinToleranceKeepsTheOpenings() {
        BucketResult result = assess(wanted(TABLE), new Catch(24, 25, 30, List.of(20.0), List.of(20.2)));
        assertThat(result.next()).isEqualTo(new BucketResult.Next(24.0, 25.0, null));
    }

    @Test
    void eachSideGetsItsOwnNextOpening() {
        BucketResult result = assess(wanted(null), new Catch(24, 25, 30, List.of(24.0), List.of(16.0)));
        assertThat(result.next()).isEqualTo(new BucketResult.Next(20.0, 31.25, OpeningSource.PROPORTIONAL));
    }

    @Test
    void aSideThatWasNeverCaughtTakesTheOpeningOfTheOther() {
        BucketResult left = assess(wanted(null), new Catch(24, 26, 30, List.of(24.0), List.of()));
        assertThat(left.next()).isEqualTo(new BucketResult.Next(20.0, 20.0, OpeningSource.PROPORTIONAL));
        BucketResult right = assess(wanted(null), new Catch(24, 26, 30, List.of(), List.of(26.0)));
        assertThat(right.next()).isEqualTo(new BucketResult.Next(20.0, 20.0, OpeningSource.PROPORTIONAL));
    }

    @Test
    void eachTestUsesThoseBeforeItOnly() {
        List<BucketResult> results = BucketAssessment.assess(
                List.of(
                        new Catch(20, 20, 30, List.of(16.0), List.of(15.0)),
                        new Catch(28, 28, 30, List.of(24.0), List.of(23.0))),
                wanted(null));
        assertThat(results.get(0).next().source()).isEqualTo(OpeningSource.PROPORTIONAL);
        assertThat(results.get(1).next()).isEqualTo(new BucketResult.Next(24.0, 25.0, OpeningSource.BETWEEN_MEASURED));
    }

    /** Both outlets give what they ought to, but only one was caught: nothing is known of the other. */
    @Test
    void anOutletNeverCaughtIsNotWithinTolerance() {
        BucketResult left = assess(wanted(TABLE), new Catch(24, 25, 30, List.of(20.0), List.of()));
        assertThat(left.leftCaught()).isTrue();
        assertThat(left.rightCaught()).isFalse();
        assertThat(left.agreement().withinTolerance()).isFalse();
        assertThat(left.next())
                .as("caught again at the same opening")
                .isEqualTo(new BucketResult.Next(24.0, 25.0, null));
        BucketResult right = assess(wanted(TABLE), new Catch(24, 25, 30, List.of(), List.of(20.0)));
        assertThat(right.leftCaught()).isFalse();
        assertThat(right.rightCaught()).isTrue();
        assertThat(right.agreement().withinTolerance()).isFalse();
    }

    @Test
    void anEarlierTestAtTheSameOpeningsSuppliesTheOtherSide() {
        BucketResult both = assess(
                wanted(null),
                new Catch(24, 25, 30, List.of(), List.of(20.4)),
                // another opening in between
                new Catch(26, 25, 30, List.of(), List.of(22.0)),
                // twice the time
                new Catch(24, 25, 60, List.of(39.6), List.of()));
        assertThat(both.flow().leftKgPerMin()).isCloseTo(39.6, within(1e-9));
        assertThat(both.flow().rightKgPerMin()).isCloseTo(40.8, within(1e-9));
        assertThat(both.flow().totalKgPerMin()).isCloseTo(80.4, within(1e-9));
        assertThat(both.agreement().leftRightPercent()).isCloseTo(-100 * 1.2 / 40.2, within(1e-9));
        assertThat(both.agreement().withinTolerance()).isTrue();
    }

    @Test
    void ofTwoTestsAtTheSameOpeningsTheLaterCountsForASideItCaught() {
        BucketResult later = assess(
                wanted(null),
                new Catch(24, 25, 30, List.of(20.0), List.of(20.0)),
                new Catch(24, 25, 30, List.of(20.5), List.of()));
        assertThat(later.flow().leftKgPerMin()).isCloseTo(41, within(1e-9));
        assertThat(later.flow().rightKgPerMin()).isCloseTo(40, within(1e-9));
    }

    @Test
    void anotherOpeningOrDeliverySuppliesNothing() {
        Catch left = new Catch(24, 25, 30, List.of(20.0), List.of());
        for (Catch earlier : List.of(
                new Catch(24, 25.1, 30, List.of(), List.of(20.0)),
                new Catch(23.9, 25, 30, List.of(), List.of(20.0)),
                new Catch(24, 25, 30, List.of(), List.of(20.0), null, new Batch("second", 0.75)))) {
            assertThat(assess(wanted(null), earlier, left).rightCaught()).isFalse();
        }
    }

    /** Streams of one outlet in two buckets are one test; an earlier one supplies nothing. */
    @Test
    void oneOutletIsCompleteOnEitherSide() {
        Wanted one = new Wanted(40.0, 12.0, 10.0, 1, 5, null);
        BucketResult result = assess(
                one,
                new Catch(24, 24, 30, List.of(10.0), List.of(10.0)),
                new Catch(24, 24, 30, List.of(), List.of(19.9)));
        assertThat(result.flow().totalKgPerMin()).isCloseTo(39.8, within(1e-9));
        assertThat(result.agreement().withinTolerance()).isTrue();
        assertThat(result.agreement().leftDeviationPercent()).isNull();
        assertThat(result.agreement().rightDeviationPercent()).isNull();
    }

    @Test
    void repeatsThatDisagreeAskForAnotherCatchNotForAnotherOpening() {
        BucketResult result = assess(wanted(TABLE), new Catch(24, 25, 30, List.of(19.6, 20.5), List.of(20.0)));
        assertThat(result.agreement().withinTolerance()).isFalse();
        assertThat(result.next()).isEqualTo(new BucketResult.Next(24.0, 25.0, null));
    }

    @Test
    void refusesACatchWithoutTimeOrWeight() {
        assertThatThrownBy(() -> new Catch(24, 25, 0, List.of(20.0), List.of())).hasMessageContaining("timeS");
        assertThatThrownBy(() -> new Catch(24, 25, 30, List.of(), List.of())).hasMessageContaining("weight");
        assertThatThrownBy(() -> new Catch(1, 1, 30, List.of(20.0), List.of(), 0.0, Batch.UNKNOWN))
                .hasMessageContaining("shownKg");
    }
}
