package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TestChangesTest {

    private static Uniformity test(double... grams) {
        List<Double> list = new ArrayList<>();
        for (double gram : grams) {
            list.add(gram);
        }
        List<Double> places = TrayLayouts.of(28, grams.length, 0.25, DrivingPattern.BACK_AND_FORTH)
                .positionsM();
        return UniformityCalculator.of(
                new TrayCatches(places, list, 28, DrivingPattern.BACK_AND_FORTH, 0.25, 3, 0.028, 0));
    }

    @Test
    void theSameTestTwiceTellsNothing() {
        Uniformity once = test(10, 11, 9, 10, 12, 9, 10);
        TestChange change = TestChanges.of(once, once);
        assertThat(change.cvChangePercent()).isZero();
        assertThat(change.chanceSecondMoreEven()).isCloseTo(0.5, within(1e-12));
        assertThat(change.scatterPercent()).isZero();
        assertThat(change.beyondNoise()).isFalse();
    }

    /** The library that computed the ratios is named in each line of the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/trays/f-quantiles.csv", numLinesToSkip = 1)
    void theChanceIsThatOfTheFDistribution(
            int traysFirst, int traysSecond, double probability, double varianceRatio, String source) {
        assertThat(source).isNotBlank();
        Uniformity first = uneven(traysFirst, Math.sqrt(varianceRatio));
        Uniformity second = uneven(traysSecond, 1);
        TestChange change = TestChanges.of(first, second);
        assertThat(change.chanceSecondMoreEven()).isCloseTo(probability, within(1e-6));
        assertThat(change.cvChangePercent()).isCloseTo(10 - 10 * Math.sqrt(varianceRatio), within(1e-9));
        assertThat(TestChanges.of(second, first).chanceSecondMoreEven()).isCloseTo(1 - probability, within(1e-6));
        assertThat(change.scatterPercent() == null).isEqualTo(traysFirst != traysSecond);
    }

    /** So many trays with a CV of 10 % times a factor. */
    private static Uniformity uneven(int trays, double factor) {
        double[] grams = new double[trays];
        for (int i = 0; i < trays; i++) {
            grams[i] = i - (trays - 1) / 2.0;
        }
        double sd = Math.sqrt(Arrays.stream(grams).map(v -> v * v).sum() / (trays - 1));
        for (int i = 0; i < trays; i++) {
            grams[i] = 20 + 2 * factor * grams[i] / sd;
        }
        return test(grams);
    }

    @Test
    void perfectlyEvenTestsAreCertainOneWay() {
        Uniformity even = test(10, 10, 10, 10, 10, 10, 10);
        Uniformity uneven = test(10, 11, 9, 10, 12, 9, 10);
        assertThat(TestChanges.of(uneven, even).chanceSecondMoreEven()).isEqualTo(1);
        assertThat(TestChanges.of(even, uneven).chanceSecondMoreEven()).isZero();
        assertThat(TestChanges.of(even, even).chanceSecondMoreEven()).isEqualTo(0.5);
    }

    /**
     * Medians 12 and 8 %, both between half and twice: ln 2 × 2 / 3.2898 = 0.42139 each, together 0.59593; ln 1.5 / 0.59593 =
     * 0.68039, of which the normal distribution has 0.75189 below it.
     */
    @Test
    void theChanceThatIsShownComesFromTheFieldCvs() {
        Uniformity first = TestFields.stated(12, 3, 0, 0, 0);
        Uniformity second = TestFields.stated(8, 3, 0, 0, 0);
        TestChange change = TestChanges.of(first, second);
        assertThat(change.chanceSecondFieldMoreEven()).isCloseTo(0.75189, within(1e-4));
        assertThat(change.tellableChancePercent()).isCloseTo(75.189, within(1e-2));
        assertThat(TestChanges.of(second, first).chanceSecondFieldMoreEven()).isCloseTo(1 - 0.75189, within(1e-4));
        assertThat(TestChanges.of(first, first).chanceSecondFieldMoreEven()).isEqualTo(0.5);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.009, 1", "0.01, 1", "0.011, 1.1", "0.5, 50", "0.989, 98.9", "0.99, 99", "1, 99"})
    void aChanceIsStatedAsOneToNinetyNine(double chance, double stated) {
        assertThat(new TestChange(0, 0.5, chance, null, 1, false).tellableChancePercent())
                .isCloseTo(stated, within(1e-9));
    }

    /**
     * Beyond noise is above the 95 % point of chi-squared with six degrees of freedom, 12.5916 (SciPy 1.17.1,
     * scipy.stats.chi2.ppf): scatter² × 6 > expected² × 12.5916.
     */
    @ParameterizedTest
    @CsvSource({"1.448, false", "1.4486, false", "1.4487, true", "1.5, true"})
    void beyondNoiseIsBeyondChiSquared(double times, boolean beyond) {
        Uniformity flat = TestFields.stated(10, 3, 0, 0, 0);
        double expected = 3;
        // d on one tray and −d on another: scatter = √(2 d² / 2 / 6)
        double d = times * expected * Math.sqrt(6);
        Uniformity changed = new Uniformity(
                new CatchSummary(
                        flat.positionsM(), TestFields.list(100 + d, 100 - d, 100, 100, 100, 100, 100), 10, 10, null),
                flat.cv(),
                flat.field(),
                flat.contrasts(),
                flat.shapes());
        TestChange change = TestChanges.of(flat, changed);
        assertThat(change.expectedScatterPercent()).isCloseTo(3, within(1e-12));
        assertThat(change.scatterPercent()).isCloseTo(times * 3, within(1e-9));
        assertThat(change.beyondNoise()).isEqualTo(beyond);
    }

    @Test
    void theExpectedScatterIsTheRootMeanSquareOfBothNoises() {
        TestChange change = TestChanges.of(TestFields.stated(10, 1, 0, 0, 0), TestFields.stated(10, 7, 0, 0, 0));
        assertThat(change.expectedScatterPercent()).isCloseTo(5, within(1e-12));
    }

    /** Places are the same to a centimetre. */
    @ParameterizedTest
    @CsvSource({"0, true", "0.009, true", "-0.009, true", "0.011, false", "-0.011, false"})
    void traysAtOtherPlacesHaveNoScatter(double movedM, boolean same) {
        Uniformity here = test(10, 11, 9, 10, 12, 9, 10);
        List<Double> places = new ArrayList<>(here.positionsM());
        places.set(4, places.get(4) + movedM);
        Uniformity there = UniformityCalculator.of(new TrayCatches(
                places,
                List.of(9.0, 11.0, 9.0, 10.0, 12.0, 9.0, 10.0),
                28,
                DrivingPattern.BACK_AND_FORTH,
                0.25,
                3,
                0.028,
                0));
        assertThat(TestChanges.of(here, there).scatterPercent() != null).isEqualTo(same);
    }

    /** The chance is calibrated: over many pairs of machines it comes true as often. */
    @Test
    @Tag("slow")
    void theChanceComesTrue() {
        Random random = new Random(8);
        double stated = 0;
        int came = 0;
        int rounds = 20_000;
        for (int i = 0; i < rounds; i++) {
            double one = Math.exp(-2 + random.nextGaussian());
            double two = Math.exp(-2 + random.nextGaussian());
            TestChange change = TestChanges.of(test(drawn(random, one)), test(drawn(random, two)));
            boolean second = change.chanceSecondMoreEven() > 0.5;
            stated += second ? change.chanceSecondMoreEven() : 1 - change.chanceSecondMoreEven();
            came += (two < one) == second ? 1 : 0;
        }
        assertThat(came / (double) rounds).isCloseTo(stated / rounds, within(0.03));
    }

    private static double[] drawn(Random random, double cv) {
        double[] grams = new double[7];
        for (int k = 0; k < 7; k++) {
            grams[k] = Math.max(0.5, 100 + 100 * Math.min(0.5, cv) * random.nextGaussian());
        }
        return grams;
    }

    /** A repeat whose trays differ only by counting is called a repeat nineteen times in twenty. */
    @Test
    @Tag("slow")
    void countingAloneIsSeldomCalledAChange() {
        Random random = new Random(5);
        int called = 0;
        int rounds = 4000;
        for (int i = 0; i < rounds; i++) {
            called +=
                    TestChanges.of(test(counted(random)), test(counted(random))).beyondNoise() ? 1 : 0;
        }
        assertThat(called / (double) rounds).isCloseTo(0.05, within(0.02));
    }

    private static double[] counted(Random random) {
        double[] pattern = {8, 9, 11, 12, 11, 9, 8};
        double[] grams = new double[7];
        for (int k = 0; k < 7; k++) {
            grams[k] = pattern[k] + Math.sqrt(0.028 * pattern[k]) * random.nextGaussian();
        }
        return grams;
    }
}
