package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.rate.SpeedRuns.Run;
import org.junit.jupiter.api.Test;

class SpeedRunsTest {

    /** 36 m in a time t s are 129.6/t km/h: 12, 10.8 and 12.96 in 10.8, 12 and 10 s. */
    private static final List<Run> THREE = List.of(new Run(36, 10.8), new Run(36, 12), new Run(36, 10));

    @Test
    void meanSpreadAndDeviationFromThePlan() {
        SpeedCheck check = SpeedRuns.of(THREE, 12.5);
        assertThat(check.meanKmPerH()).isCloseTo(11.92, within(1e-9));
        assertThat(check.spreadPercent()).isCloseTo(100 * 2.16 / 11.92, within(1e-9));
        assertThat(check.deviationPercent()).isCloseTo(100 * (11.92 / 12.5 - 1), within(1e-9));
        assertThat(check.runs()).isEqualTo(3);
    }

    /** Sample standard deviation of 12, 10.8, 12.96 is 1.08222; c₄ of two degrees of freedom 0.886227. */
    @Test
    void theErrorIsTheUnbiasedScatterOverTheRootOfTheRuns() {
        assertThat(SpeedRuns.of(THREE, null).standardErrorKmPerH())
                .isCloseTo(1.082220 / 0.886227 / Math.sqrt(3), within(1e-5));
    }

    /** Range / 1.128 of two runs: 12 and 10.8 km/h. */
    @Test
    void theErrorOfTwoRunsFollowsFromTheirRange() {
        SpeedCheck two = SpeedRuns.of(THREE.subList(0, 2), null);
        assertThat(two.standardErrorKmPerH()).isCloseTo(1.2 / 1.128379 / Math.sqrt(2), within(1e-5));
    }

    /** One run, or two that agree by chance: 0.4 s of the time. */
    @Test
    void theErrorIsNeverLessThanThatOfTheTime() {
        SpeedCheck one = SpeedRuns.of(List.of(new Run(70, 20)), null);
        assertThat(one).isEqualTo(new SpeedCheck(12.6, 0, null, 1, 12.6 * 0.4 / 20));
        SpeedCheck two = SpeedRuns.of(List.of(new Run(70, 20), new Run(70, 20)), null);
        assertThat(two.standardErrorKmPerH()).isCloseTo(12.6 * 0.02 / Math.sqrt(2), within(1e-12));
    }

    @Test
    void refusesNoRunAndARunWithoutLengthOrTime() {
        assertThatThrownBy(() -> SpeedRuns.of(List.of(), null)).hasMessageContaining("one run");
        assertThatThrownBy(() -> new Run(0, 20)).hasMessageContaining("distanceM");
        assertThatThrownBy(() -> new Run(70, 0)).hasMessageContaining("timeS");
    }
}
