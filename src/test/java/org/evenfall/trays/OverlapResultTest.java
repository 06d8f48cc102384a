package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.junit.jupiter.api.Test;

class OverlapResultTest {

    /** Half-rate width: Ohio State bulletin B-817 (seen): 4 in at the centre, 2 in at 6 ft: 12 ft. */
    @Test
    void halfRateWidthAsPublished() {
        SpreadPattern line = new SpreadPattern(new double[] {-12, -6, 0, 6, 12}, new double[] {0, 2, 4, 2, 0});
        OverlapResult laid = OverlapResult.of(line, DrivingPattern.ROUND_AND_ROUND, 12);
        assertThat(laid.halfRateWidth()).isCloseTo(12, within(1e-9));
        assertThat(laid.cvPercent()).isCloseTo(0, within(1e-9));
        assertThat(laid.leftRightPercent()).isCloseTo(0, within(1e-9));
        assertThat(laid.edgePercent()).isZero();
    }

    @Test
    void aLineThatEndsInsideThePatternSaysSo() {
        SpreadPattern line = new SpreadPattern(new double[] {-6, -3, 0, 3, 6}, new double[] {3, 3.5, 4, 3.5, 2.8});
        OverlapResult laid = OverlapResult.of(line, DrivingPattern.BACK_AND_FORTH, 12);
        assertThat(laid.halfRateWidth()).isNull();
        assertThat(laid.edgePercent()).isCloseTo(75, within(1e-9));
        assertThat(laid.leftRightPercent()).isPositive();
    }

    /** A single tray off the middle leans to its side; trays that do not line up are interpolated. */
    @Test
    void traysThatDoNotLineUpAreInterpolated() {
        SpreadPattern line = new SpreadPattern(
                new double[] {-9.1, -5, -1.2, 0.3, 4, 7.7, 10}, new double[] {0, 1, 2, 2.2, 1.6, 0.7, 0});
        OverlapResult laid = OverlapResult.of(line, DrivingPattern.ROUND_AND_ROUND, 11);
        assertThat(laid.positions()).hasSize(3);
        double brute =
                line.at(laid.positions().get(1)) + line.at(laid.positions().get(1) - 11);
        assertThat(laid.overlapped().get(1)).isCloseTo(brute, within(1e-12));
        assertThat(Objects.requireNonNull(laid.cvPercent())).isPositive();
        assertThat(laid.leftRightPercent()).isNegative();
    }
}
