package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.rate.BucketAssessment.Catch;
import org.evenfall.rate.BucketAssessment.Wanted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values computed by hand. */
class TimedWeightTest {

    private static BucketResult assess(TimedWeight timed, double flowKgPerMin) {
        Catch caught = new Catch(20, 21, timed.timeS(), timed.leftKg(), timed.rightKg());
        return BucketAssessment.assess(List.of(caught), new Wanted(flowKgPerMin, 24.0, 10.0, 2, 5, null))
                .get(0);
    }

    /** 50 kg in 60 and 75 s left are 50 and 40 kg/min, 45 in the mean; in 62.5 s right 48 kg/min. */
    @Test
    void theFlowIsTheWeightOverEachTime() {
        TimedWeight timed = TimedWeight.of(50, List.of(60.0, 75.0), List.of(62.5));
        // (60 + 75 + 62.5) / 3
        assertThat(timed.timeS()).isCloseTo(65.8333333333, within(1e-9));
        BucketResult result = assess(timed, 93);
        assertThat(result.flow().leftKgPerMin()).isCloseTo(45, within(1e-9));
        assertThat(result.flow().rightKgPerMin()).isCloseTo(48, within(1e-9));
        assertThat(result.flow().totalKgPerMin()).isCloseTo(93, within(1e-9));
        assertThat(result.agreement().deviationPercent()).isCloseTo(0, within(1e-9));
        assertThat(result.agreement().leftRightPercent()).isCloseTo(-200.0 * 3 / 93, within(1e-9));
        // 50 and 40 differ by 10 of 45
        assertThat(result.agreement().repeatSpreadPercent()).isCloseTo(1000 / 45.0, within(1e-9));
    }

    /**
     * 40 kg in 40 s on each side, not repeated: 60 kg/min each, 120 in all; 24 m at 10 km/h are 300 kg/ha. Timing error
     * 0.4 s of 40 s = 1 %, one catch √(1.5² + 1²) = 1.80278 %, two sides over √2 = 1.27475 %: 3.82426 kg/ha.
     */
    @Test
    void theTimingErrorIsThatOfTheMeanTime() {
        BucketResult result = assess(TimedWeight.of(40, List.of(40.0), List.of(40.0)), 120);
        assertThat(result.kgPerHa()).isCloseTo(300, within(1e-9));
        assertThat(result.kgPerHaStandardError()).isCloseTo(3.82426, within(1e-5));
        assertThat(result.deviationErrorPercent()).isCloseTo(1.27475, within(1e-5));
    }

    @Test
    void oneSideAloneIsTimed() {
        TimedWeight right = TimedWeight.of(25, List.of(), List.of(30.0));
        assertThat(right.leftKg()).isEmpty();
        assertThat(right.rightKg()).containsExactly(25.0);
        assertThat(right.timeS()).isEqualTo(30);
    }

    @ParameterizedTest
    @CsvSource({"0, 30", "-1, 30", "25, 0", "25, -1", "NaN, 30", "25, NaN"})
    void whatIsNotAboveZeroIsRefused(double weightKg, double timeS) {
        List<Double> times = List.of(timeS);
        assertThatThrownBy(() -> TimedWeight.of(weightKg, times, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TimedWeight.of(weightKg, List.of(), times))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void withoutATimeThereIsNothing() {
        assertThatThrownBy(() -> TimedWeight.of(25, List.of(), List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
