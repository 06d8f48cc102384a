package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Test;

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

    /** With six degrees of freedom each, variances in the ratio 4.28 stand at 95 % (F table, 6 and 6: 4.28). */
    @Test
    void theChanceIsThatOfTheFDistribution() {
        Uniformity first = test(6, 8, 10, 14, 10, 8, 7);
        double shrink = Math.sqrt(1 / 4.2839);
        double mean = first.meanG();
        double[] calmer = first.relativePercent().stream()
                .mapToDouble(relative -> mean * (1 + shrink * (relative / 100 - 1)))
                .toArray();
        assertThat(TestChanges.of(first, test(calmer)).chanceSecondMoreEven()).isCloseTo(0.95, within(1e-4));
        assertThat(TestChanges.of(test(calmer), first).chanceSecondMoreEven()).isCloseTo(0.05, within(1e-4));
    }

    /** The chance means what it says: over many pairs of machines it comes true as often. */
    @Test
    void theChanceComesTrue() {
        Random random = new Random(8);
        double told = 0;
        int came = 0;
        int rounds = 20_000;
        for (int i = 0; i < rounds; i++) {
            double one = Math.exp(-2 + random.nextGaussian());
            double two = Math.exp(-2 + random.nextGaussian());
            TestChange change = TestChanges.of(test(drawn(random, one)), test(drawn(random, two)));
            boolean second = change.chanceSecondMoreEven() > 0.5;
            told += second ? change.chanceSecondMoreEven() : 1 - change.chanceSecondMoreEven();
            came += (two < one) == second ? 1 : 0;
        }
        assertThat(came / (double) rounds).isCloseTo(told / rounds, within(0.03));
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

    /** Exact: the trapezium rule on seven trays halves the outermost. */
    @Test
    void theWeightedMeanHalvesTheOutermost() {
        Uniformity test = test(6, 12, 12, 12, 12, 12, 18);
        assertThat(test.meanG()).isCloseTo(12, within(1e-12));
        assertThat(test.weightedMeanG()).isCloseTo(12, within(1e-12));
        assertThat(test(6, 12, 12, 12, 12, 12, 12).weightedMeanG()).isCloseTo((3 + 60 + 6) / 6.0, within(1e-12));
    }

    /** Published: 0.25 t/ha between 30 and 10 % CV (Irish press 2019), 20 kg/ha at 20 % (UK Fertiliser Society review). */
    @Test
    void theLossIsARangeThatGrowsWithTheSquare() {
        CropLoss twenty = CropLoss.of(20);
        assertThat(twenty.lowKgPerHa()).isCloseTo(20, within(1e-9));
        assertThat(CropLoss.of(30).highKgPerHa() - CropLoss.of(10).highKgPerHa())
                .isCloseTo(250, within(1e-9));
        assertThat(CropLoss.of(0).highKgPerHa()).isZero();
    }
}
