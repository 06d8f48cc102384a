package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpeedRunsTest {

    @Test
    void meanSpreadAndDeviation() {
        SpeedCheck check = SpeedRuns.of(List.of(11.8, 12.4, 12.1), 12.5);
        assertThat(check.meanKmPerH()).isCloseTo(12.1, within(1e-12));
        assertThat(check.spreadPercent()).isCloseTo(100 * 0.6 / 12.1, within(1e-9));
        assertThat(check.deviationPercent()).isCloseTo(100 * (12.1 / 12.5 - 1), within(1e-9));
        assertThat(check.runs()).isEqualTo(3);
    }

    @Test
    void tooFastIsPositiveAndWithoutAPlanThereIsNoDeviation() {
        assertThat(SpeedRuns.of(List.of(12.6), 12.0).deviationPercent()).isCloseTo(5, within(1e-9));
        assertThat(SpeedRuns.of(List.of(12.6), null)).isEqualTo(new SpeedCheck(12.6, 0, null, 1));
    }

    @Test
    void refusesNoRunsAndStandstill() {
        assertThatThrownBy(() -> SpeedRuns.of(List.of(), null)).hasMessageContaining("kmPerH");
        assertThatThrownBy(() -> SpeedRuns.of(List.of(12.0, 0.0), null)).hasMessageContaining("kmPerH");
    }
}
