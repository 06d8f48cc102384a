package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.junit.jupiter.api.Test;

/** What another opening does to the flow. */
class OpeningChangeTest {

    private static final OpeningTable TABLE =
            new OpeningTable(List.of(new FlowPoint(20, 80), new FlowPoint(30, 160), new FlowPoint(40, 280)));

    private static double ratio(double from, double to, Map<Double, Double> measured, OpeningTable table) {
        return OpeningChange.flowRatio(from, to, measured, table);
    }

    @Test
    void measuredPointsComeFirst() {
        Map<Double, Double> measured = Map.of(25.0, 50.0, 30.0, 60.0, 20.0, 35.0);
        assertThat(ratio(25, 30, measured, TABLE)).isEqualTo(1.2, within(1e-12));
        assertThat(ratio(30, 22.5, measured, TABLE)).isEqualTo(42.5 / 60, within(1e-12));
    }

    /** 35 lies beyond the points measured, so the table counts: 220 over 120. */
    @Test
    void thenTheTable() {
        assertThat(ratio(25, 35, Map.of(25.0, 50.0, 30.0, 60.0), TABLE)).isEqualTo(220.0 / 120, within(1e-12));
        assertThat(ratio(25, 35, Map.of(25.0, 50.0), TABLE)).isEqualTo(220.0 / 120, within(1e-12));
    }

    @Test
    void thenTheProportion() {
        assertThat(ratio(25, 45, Map.of(), TABLE)).isEqualTo(1.8, within(1e-12));
        assertThat(ratio(0.8, 1, Map.of(), null)).isEqualTo(1.25, within(1e-12));
    }

    @Test
    void theSameOpeningChangesNothing() {
        assertThat(ratio(0, 0, Map.of(), null)).isEqualTo(1);
        assertThat(ratio(99, 99, Map.of(), TABLE)).isEqualTo(1);
        assertThat(ratio(0, 3, Map.of(), null)).isInfinite();
    }
}
