package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.evenfall.flight.DrivingPattern;
import org.junit.jupiter.api.Test;

class WheelMarkAvoidanceTest {

    private static TrayLayout avoiding(double widthM, int trays, WheelMarks marks, double acrossM) {
        return TrayLayouts.asideFrom(
                marks, TrayLayouts.of(widthM, trays, acrossM * acrossM, DrivingPattern.BACK_AND_FORTH), acrossM);
    }

    @Test
    void sevenTraysOnWideTramlinesAreClearOfTheWheelsAnyway() {
        for (double width : new double[] {18, 24, 28, 36}) {
            assertThat(avoiding(width, 7, WheelMarks.USUAL, 0.5).moved()).isFalse();
        }
    }

    /** Trays at ±1 m, wheels at ±0.9 m: tyre and tray reach 0.5 m, and 0.05 m stay free, so the tray goes to 1.45 m. */
    @Test
    void aTrayInAWheelMarkGoesToTheNearestFreePlace() {
        TrayLayout layout = avoiding(10, 11, WheelMarks.USUAL, 0.5);
        assertThat(layout.positionsM().get(6)).isCloseTo(1.45, within(1e-9));
        assertThat(layout.movedM().get(6)).isCloseTo(0.45, within(1e-9));
        assertThat(layout.positionsM().get(4)).isCloseTo(-1.45, within(1e-9));
        assertThat(layout.movedM().get(5)).isZero();
        assertThat(layout.inWheelMarks()).isEmpty();
    }

    @Test
    void aTrayWithoutRoomIsListed() {
        TrayLayout layout = avoiding(24, 33, WheelMarks.USUAL, 0.5);
        assertThat(layout.inWheelMarks()).isNotEmpty();
        assertThat(layout.positionsM().get(16)).isZero();
    }

    @Test
    void whateverTheTractorTraysAreClearOrderedAndApart() {
        Random random = new Random(77);
        for (int round = 0; round < 400; round++) {
            double width = 9 + random.nextInt(40);
            double across = 0.2 + 0.4 * random.nextDouble();
            WheelMarks marks = new WheelMarks(1.2 + 1.2 * random.nextDouble(), 0.2 + 0.7 * random.nextDouble());
            int trays = 5 + random.nextInt(20);
            TrayLayout layout = avoiding(width, trays, marks, across);
            List<Double> even = TrayLayouts.of(width, trays, across * across, DrivingPattern.BACK_AND_FORTH)
                    .positionsM();
            for (int i = 0; i < trays; i++) {
                double at = layout.positionsM().get(i);
                assertThat(at - even.get(i)).isCloseTo(layout.movedM().get(i), within(1e-9));
                if (!layout.inWheelMarks().contains(i)) {
                    for (double pass : layout.passesM()) {
                        for (double side : new double[] {-0.5, 0.5}) {
                            assertThat(Math.abs(at - pass - side * marks.trackM()))
                                    .isGreaterThanOrEqualTo((marks.tyreM() + across) / 2);
                        }
                    }
                }
                if (i > 0 && layout.movedM().get(i) != 0 && even.get(i) - even.get(i - 1) >= across) {
                    assertThat(at - layout.positionsM().get(i - 1)).isGreaterThanOrEqualTo(across - 1e-9);
                }
            }
            assertThat(layout.positionsM()).isSorted();
        }
    }
}
