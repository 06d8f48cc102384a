package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.evenfall.machine.FactorRule;
import org.evenfall.rate.BucketAssessment.Batch;
import org.evenfall.rate.BucketAssessment.Catch;
import org.evenfall.rate.BucketAssessment.Wanted;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A terminal with a factor. 80 kg/min from two outlets on 24 m at 10 km/h are 200 kg/ha. Values made up for the purpose. */
class FactorTest {

    private static final Offset<Double> EXACT = within(1e-12);

    private static Wanted wanted(FactorRule rule) {
        return new Wanted(80.0, 24.0, 10.0, 2, 5, null, 0.5, rule);
    }

    private static Catch caught(double factor, double leftKg, double rightKg, @Nullable Double shownKg) {
        return new Catch(factor, factor, 15, List.of(leftKg), List.of(rightKg), shownKg, Batch.UNKNOWN);
    }

    private static BucketResult assess(Wanted wanted, Catch... catches) {
        List<BucketResult> results = BucketAssessment.assess(List.of(catches), wanted);
        return results.get(results.size() - 1);
    }

    /** 20.0 kg shown, 9.3 + 8.9 = 18.2 kg caught, old 1.00: 0.91 or 1/0.91 = 1.098 901…; 1.25 gives 1.1375 or 1.373 626…. */
    @ParameterizedTest
    @CsvSource({
        "1.00, CAUGHT_OVER_SHOWN, 0.91",
        "1.00, SHOWN_OVER_CAUGHT, 1.098901098901099",
        "1.25, CAUGHT_OVER_SHOWN, 1.1375",
        "1.25, SHOWN_OVER_CAUGHT, 1.3736263736263736"
    })
    void theNextFactorFollowsTheRuleOfTheHandbook(double old, FactorRule rule, double next) {
        BucketResult result = assess(wanted(rule), caught(old, 9.3, 8.9, 20.0));
        assertThat(result.openingLeft()).isEqualTo(old);
        assertThat(result.agreement().deviationPercent()).isCloseTo(-9, within(1e-9));
        assertThat(result.next().left()).isCloseTo(next, EXACT);
        assertThat(result.next().right()).isEqualTo(result.next().left());
        assertThat(result.next().source()).isEqualTo(OpeningSource.BY_FACTOR);
        // the wanted rate × caught ÷ shown
        assertThat(result.kgPerHa()).isCloseTo(182, within(1e-9));
    }

    @Test
    void withoutARuleTheDeviationIsKnownButNoNextFactor() {
        BucketResult result = assess(wanted(FactorRule.UNANSWERED), caught(1, 9.3, 8.9, 20.0));
        assertThat(result.agreement().deviationPercent()).isCloseTo(-9, within(1e-9));
        assertThat(result.next()).isEqualTo(new BucketResult.Next(null, null, null));
    }

    /** Nothing shown: in 15 s 80 kg/min are 20 kg. */
    @Test
    void whatTheTerminalOughtToGiveCountsWhereNoWeightWasShown() {
        BucketResult result = assess(wanted(FactorRule.CAUGHT_OVER_SHOWN), caught(1, 9.3, 8.9, null));
        assertThat(result.next().left()).isCloseTo(0.91, EXACT);
        Wanted nothing = new Wanted(null, null, null, 2, 5, null, 0, FactorRule.CAUGHT_OVER_SHOWN);
        assertThat(assess(nothing, caught(1, 9.3, 8.9, null)).next())
                .isEqualTo(new BucketResult.Next(null, null, null));
        // the weight shown is enough for the factor, not for a rate
        BucketResult shown = assess(nothing, caught(1, 9.3, 8.9, 20.0));
        assertThat(shown.next().left()).isCloseTo(0.91, EXACT);
        assertThat(shown.kgPerHa()).isNull();
    }

    /** Means of the repeats of each side: 9.2 and 9.0 of four outlets are 36.4; 40 shown. */
    @Test
    void repeatsAndOutletsAreCountedAsForAnOpening() {
        Wanted four = new Wanted(160.0, 24.0, 10.0, 4, 5, null, 0, FactorRule.CAUGHT_OVER_SHOWN);
        BucketResult result = assess(four, new Catch(1, 1, 15, List.of(9.1, 9.3), List.of(9.0), 40.0, Batch.UNKNOWN));
        assertThat(result.next().left()).isCloseTo(0.91, EXACT);
    }

    @Test
    void oneOutletIsTheWholeWeightShown() {
        Wanted one = new Wanted(40.0, 12.0, 10.0, 1, 5, null, 0, FactorRule.SHOWN_OVER_CAUGHT);
        BucketResult result = assess(one, new Catch(1, 1, 15, List.of(9.1), List.of(), 10.0, Batch.UNKNOWN));
        assertThat(result.next().left()).isCloseTo(1 / 0.91, EXACT);
    }

    /** Nothing lies between two factors: the last test alone counts. */
    @Test
    void factorsAreNotInterpolated() {
        BucketResult result = assess(
                wanted(FactorRule.CAUGHT_OVER_SHOWN), caught(0.8, 6.9, 7.1, 20.0), caught(1.2, 12.9, 13.1, 20.0));
        assertThat(result.next().left()).isCloseTo(1.2 * 26 / 20, EXACT);
    }

    /** Each side by the weight shown in its own test: 9.1 of 10 and 10.4 of 10.5; the mean of 0.91 and 0.990 476… */
    @Test
    void anotherTestWithTheSameFactorSuppliesTheOtherSide() {
        BucketResult result = assess(
                wanted(FactorRule.CAUGHT_OVER_SHOWN),
                new Catch(1, 1, 15, List.of(9.1), List.of(), 20.0, Batch.UNKNOWN),
                new Catch(1, 1, 15, List.of(), List.of(10.4), 21.0, Batch.UNKNOWN));
        assertThat(result.leftCaught()).isTrue();
        assertThat(result.next().left()).isCloseTo((0.91 + 10.4 / 10.5) / 2, EXACT);
    }

    @ParameterizedTest
    @CsvSource({"9.49, false", "9.50, true", "9.51, true", "10.49, true", "10.50, true", "10.51, false"})
    void theWeightCaughtMayDeviateByTheTolerance(double kg, boolean within) {
        BucketResult result = assess(wanted(FactorRule.CAUGHT_OVER_SHOWN), caught(1.1, kg, kg, 20.0));
        assertThat(result.agreement().withinTolerance()).isEqualTo(within);
        assertThat(result.next().source()).isEqualTo(within ? null : OpeningSource.BY_FACTOR);
        if (within) {
            assertThat(result.next().left()).isEqualTo(1.1);
        }
    }

    /** The terminal follows the speed and counts over the same time; without its count the time matters. */
    @Test
    void theErrorHoldsNeitherSpeedNorATimeThatTheTerminalCounts() {
        BucketResult shown = assess(wanted(FactorRule.CAUGHT_OVER_SHOWN), caught(1, 10, 10, 20.0));
        assertThat(shown.kgPerHaStandardError()).isCloseTo(200 * 0.015 / Math.sqrt(2), within(1e-9));
        BucketResult timed = assess(wanted(FactorRule.CAUGHT_OVER_SHOWN), caught(1, 10, 10, null));
        assertThat(timed.kgPerHaStandardError())
                .isCloseTo(200 * Math.hypot(0.015, 0.4 / 15) / Math.sqrt(2), within(1e-9));
    }
}
