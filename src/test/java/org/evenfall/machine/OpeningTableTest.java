package org.evenfall.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningTableTest {

    private static final OpeningTable TABLE =
            new OpeningTable(List.of(new FlowPoint(10, 30), new FlowPoint(20, 60), new FlowPoint(30, 100)));

    @Test
    void linearBetweenRowsAndExactAtThem() {
        assertThat(TABLE.flowKgPerMin(10)).hasValue(30);
        assertThat(TABLE.flowKgPerMin(20)).hasValue(60);
        assertThat(TABLE.flowKgPerMin(25)).hasValue(80);
        assertThat(TABLE.flowKgPerMin(30)).hasValue(100);
        assertThat(TABLE.opening(30)).hasValue(10);
        assertThat(TABLE.opening(70)).hasValue(22.5);
        assertThat(TABLE.opening(100)).hasValue(30);
    }

    @Test
    void isItsOwnInverse() {
        for (double opening = 10; opening <= 30; opening += 0.7) {
            assertThat(TABLE.opening(TABLE.flowKgPerMin(opening).orElseThrow()).orElseThrow())
                    .isCloseTo(opening, within(1e-9));
        }
    }

    @Test
    void endsWhereItEnds() {
        assertThat(TABLE.flowKgPerMin(9.99)).isEmpty();
        assertThat(TABLE.flowKgPerMin(30.01)).isEmpty();
        assertThat(TABLE.opening(29.99)).isEmpty();
        assertThat(TABLE.opening(100.01)).isEmpty();
    }

    @Test
    void scalesFlowsNotOpenings() {
        OpeningTable scaled = TABLE.scaled(1.2);
        assertThat(scaled.points().get(1)).isEqualTo(new FlowPoint(20, 72));
        assertThat(scaled.opening(120)).hasValue(30);
    }

    @Test
    void twoRowsThatRiseMakeATable() {
        FlowPoint low = new FlowPoint(10, 30);
        assertThat(OpeningTable.usable(List.of())).isFalse();
        assertThat(OpeningTable.usable(List.of(low))).isFalse();
        assertThat(OpeningTable.usable(List.of(low, new FlowPoint(10.1, 30.1)))).isTrue();
        assertThat(OpeningTable.usable(List.of(low, new FlowPoint(10, 40)))).isFalse();
        assertThat(OpeningTable.usable(List.of(low, new FlowPoint(20, 30)))).isFalse();
        assertThat(OpeningTable.usable(List.of(low, new FlowPoint(20, 60), new FlowPoint(15, 80))))
                .isFalse();
        assertThatThrownBy(() -> new OpeningTable(List.of(low)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rise");
    }
}
