package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which trays are a pair, and when their differences are more than chance. */
class MirrorPairsTest {

    private static Uniformity test(DrivingPattern pattern, List<Double> places, double... grams) {
        return UniformityCalculator.of(new TrayCatches(places, TestFields.list(grams), 28, pattern, 0.25, 1, 0.025, 0));
    }

    private static MirrorPairs pairs(DrivingPattern pattern, List<Double> places, double... grams) {
        return MirrorPairs.of(test(pattern, places, grams), new Tramlines(28, pattern));
    }

    /** Seven trays: three pairs back and forth; round and round the two outermost are one place. */
    @ParameterizedTest
    @CsvSource({"BACK_AND_FORTH, 3", "UNANSWERED, 3", "ROUND_AND_ROUND, 2"})
    void whichArePairs(DrivingPattern pattern, int count) {
        List<Double> places = TestFields.places(7);
        assertThat(pairs(pattern, places, 10, 10, 10, 10, 10, 10, 10).pairs()).isEqualTo(count);
        // midway tells the sides apart only back and forth
        assertThat(pairs(pattern, places, 6, 10, 10, 10, 10, 10, 14).significant())
                .isEqualTo(count == 3);
        assertThat(pairs(pattern, places, 10, 7, 10, 10, 10, 13, 10).significant())
                .isTrue();
    }

    /** Counting noise 5 % at the mean of 10 g and 1 % of truth: Σ d²/(2 × 0.0025 + 0.0001), by hand. */
    @Test
    void theSumByHand() {
        MirrorPairs pairs = pairs(DrivingPattern.BACK_AND_FORTH, TestFields.places(7), 9.5, 9, 10, 10, 10, 11, 10.5);
        assertThat(pairs.chiSquared()).isCloseTo((0.1 * 0.1 + 0.2 * 0.2) / 0.0051, within(1e-9));
        assertThat(pairs.leftLessRightPercent()).isCloseTo(-20, within(1e-9));
        assertThat(pairs.distanceM()).isCloseTo(28 / 3.0, within(1e-9));
        assertThat(pairs.significant()).isFalse();
    }

    /** 11.345 is the 99 % point of chi-squared with three degrees of freedom (table of any handbook). */
    @ParameterizedTest
    @CsvSource({"11.34, false", "11.35, true"})
    void theLimit(double chiSquared, boolean significant) {
        assertThat(new MirrorPairs(3, chiSquared, 0, 0, 0).significant()).isEqualTo(significant);
        assertThat(new MirrorPairs(0, chiSquared, 0, 0, 0).significant()).isFalse();
    }

    /** A tray may be 0.5 m off the mirrored place; further off it has no partner. A larger offset needs a larger difference. */
    @Test
    void traysThatWereMoved() {
        List<Double> near = List.of(-14.0, -9.3, -4.6, 0.0, 5.0, 9.3, 14.0);
        List<Double> far = List.of(-14.0, -9.3, -4.6, 0.0, 5.2, 9.3, 14.0);
        double[] even = {10, 10, 10, 10, 10, 10, 10};
        assertThat(pairs(DrivingPattern.BACK_AND_FORTH, near, even).pairs()).isEqualTo(3);
        assertThat(pairs(DrivingPattern.BACK_AND_FORTH, far, even).pairs()).isEqualTo(2);
        double[] tilted = {10, 10, 9, 10, 11, 10, 10};
        assertThat(pairs(DrivingPattern.BACK_AND_FORTH, near, tilted).chiSquared())
                .isLessThan(pairs(DrivingPattern.BACK_AND_FORTH, TestFields.places(7), tilted)
                        .chiSquared());
        List<Double> left = List.of(-14.0, -10.0, -6.0, -2.0, 0.0);
        assertThat(pairs(DrivingPattern.BACK_AND_FORTH, left, 10, 10, 10, 10, 12))
                .isEqualTo(new MirrorPairs(0, 0, 0, 0, 0));
    }

    /** Each tray is in one pair only. */
    @Test
    void twoTraysAtOnePlace() {
        List<Double> places = List.of(-7.0, -7.2, 0.0, 7.0, 14.0);
        assertThat(pairs(DrivingPattern.BACK_AND_FORTH, places, 10, 10, 10, 10, 10)
                        .pairs())
                .isEqualTo(1);
    }
}
