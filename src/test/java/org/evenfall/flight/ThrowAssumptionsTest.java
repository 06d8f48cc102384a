package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThrowAssumptionsTest {

    /** Source: Yildirim 2006 (abstract), discs of 0, 10 and 20°: the model's range is the lower half of it. */
    @Test
    void theRangeIsEveryCombination() {
        assertThat(ThrowAssumptions.RANGE).hasSize(12);
        assertThat(new HashSet<>(ThrowAssumptions.RANGE)).hasSize(12);
        assertThat(ThrowAssumptions.RANGE.stream()
                        .mapToDouble(ThrowAssumptions::takeOffDeg)
                        .summaryStatistics())
                .satisfies(range -> {
                    assertThat(range.getMin()).isZero();
                    assertThat(range.getMax()).isEqualTo(10);
                });
        assertThat(ThrowAssumptions.RANGE.stream()
                        .mapToDouble(ThrowAssumptions::friction)
                        .summaryStatistics()
                        .getMax())
                .isEqualTo(0.30);
    }

    /** Throws of urea (1 275 kg/m³) and a dense product (1 800) of 3.3 mm from 1 m, computed apart; tolerance 0.5 %. */
    @ParameterizedTest
    @CsvSource({
        "0, 30, 9.883, 10.716", "0, 40, 12.103, 13.349", "0, 50, 13.964, 15.623",
        "5, 30, 12.818, 14.606", "5, 40, 15.964, 18.714", "5, 50, 18.541, 22.191",
        "10, 30, 15.097, 17.799", "10, 40, 18.648, 22.622", "10, 50, 21.458, 26.529"
    })
    void throwsByTakeOff(double takeOffDeg, double speed, double ureaM, double denseM) {
        ThrowAssumptions assumed = new ThrowAssumptions(takeOffDeg, ThrowModel.FRICTION, 1);
        assertThat(ThrowModel.distanceM(3.3, 1275, speed, 1, assumed)).isCloseTo(ureaM, within(0.005 * ureaM));
        assertThat(ThrowModel.distanceM(3.3, 1800, speed, 1, assumed)).isCloseTo(denseM, within(0.005 * denseM));
    }

    /** Frictionless, the speeds along and across the vane are alike; friction costs the one along it. */
    @Test
    void frictionSlowsAndDragShortens() {
        ThrowAssumptions usual = ThrowAssumptions.USUAL;
        assertThat(usual.speedShare()).isEqualTo(1);
        assertThat(new ThrowAssumptions(5, 0.10, 1).speedShare()).isBetween(1.005, 1.03);
        assertThat(new ThrowAssumptions(5, 0.30, 1).speedShare()).isBetween(0.92, 0.97);
        assertThat(ThrowModel.distanceM(3.3, 1275, 45, 1, new ThrowAssumptions(5, ThrowModel.FRICTION, 1.2)))
                .isCloseTo(ThrowModel.distanceM(3.3, 1275 / 1.2, 45, 1), within(0.2))
                .isLessThan(ThrowModel.distanceM(3.3, 1275, 45, 1));
    }
}
