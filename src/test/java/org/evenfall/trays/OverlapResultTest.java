package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.junit.jupiter.api.Test;

class OverlapResultTest {

    /** Source: Ohio State University, bulletin B-817, half-rate width: 4 in at the centre, 2 in at 6 ft give 12 ft. */
    @Test
    void halfRateWidthAsPublished() {
        SpreadPattern line = new SpreadPattern(new double[] {-12, -6, 0, 6, 12}, new double[] {0, 2, 4, 2, 0});
        OverlapResult overlap = OverlapResult.of(line, DrivingPattern.ROUND_AND_ROUND, 12);
        assertThat(overlap.halfRateWidth()).isCloseTo(12, within(1e-9));
        assertThat(overlap.cvPercent()).isCloseTo(0, within(1e-9));
        assertThat(overlap.leftRightPercent()).isCloseTo(0, within(1e-9));
        assertThat(overlap.edgePercent()).isZero();
    }

    @Test
    void aLineThatEndsInsideThePatternHasNoHalfRateWidth() {
        SpreadPattern line = new SpreadPattern(new double[] {-6, -3, 0, 3, 6}, new double[] {3, 3.5, 4, 3.5, 2.8});
        OverlapResult overlap = OverlapResult.of(line, DrivingPattern.BACK_AND_FORTH, 12);
        assertThat(overlap.halfRateWidth()).isNull();
        assertThat(overlap.edgePercent()).isCloseTo(75, within(1e-9));
        assertThat(overlap.leftRightPercent()).isPositive();
    }

    /** Places between trays are interpolated. */
    @Test
    void traysThatDoNotLineUpAreInterpolated() {
        SpreadPattern line = new SpreadPattern(
                new double[] {-9.1, -5, -1.2, 0.3, 4, 7.7, 10}, new double[] {0, 1, 2, 2.2, 1.6, 0.7, 0});
        OverlapResult overlap = OverlapResult.of(line, DrivingPattern.ROUND_AND_ROUND, 11);
        assertThat(overlap.positions()).hasSize(3);
        double brute = line.at(overlap.positions().get(1))
                + line.at(overlap.positions().get(1) - 11);
        assertThat(overlap.overlapped().get(1)).isCloseTo(brute, within(1e-12));
        assertThat(Objects.requireNonNull(overlap.cvPercent())).isPositive();
        assertThat(overlap.leftRightPercent()).isNegative();
    }

    /** The folded rate falls to half between 6 and 12: by hand, sides 3 and 2 of 4 at 6, 1 and 0 at 12. */
    @Test
    void halfRateWidthIsThatOfTheMeanOfBothSides() {
        SpreadPattern line = new SpreadPattern(new double[] {-12, -6, 0, 6, 12}, new double[] {1, 3, 4, 2, 0});
        OverlapResult overlap = OverlapResult.of(line, DrivingPattern.ROUND_AND_ROUND, 12);
        // 2.5 at 6, 0.5 at 12: 2 is a quarter of the way
        assertThat(overlap.halfRateWidth()).isCloseTo(15, within(1e-9));
        assertThat(overlap.edgePercent()).isCloseTo(25, within(1e-9));
        // area left 6·3.5 + 6·2 = 33, right 6·3 + 6·1 = 24
        assertThat(overlap.leftRightPercent()).isCloseTo(100 * 9 / 57.0, within(1e-9));
        // two places: 4 + 1 on the middle of a pass, 3 + 2 midway
        assertThat(overlap.mean()).isCloseTo(5, within(1e-9));
    }

    @Test
    void anEmptyLineHasNoFigures() {
        SpreadPattern line = new SpreadPattern(new double[] {-6, 0, 6}, new double[] {0, 0, 0});
        OverlapResult overlap = OverlapResult.of(line, DrivingPattern.ROUND_AND_ROUND, 6);
        assertThat(overlap.cvPercent()).isNull();
        assertThat(overlap.halfRateWidth()).isNull();
        assertThat(overlap.leftRightPercent()).isZero();
        assertThat(overlap.edgePercent()).isZero();
    }

    @Test
    void theScanIsForTheLimitsOfGoodAndAcceptable() {
        SpreadPattern line = new SpreadPattern(new double[] {-12, -6, 0, 6, 12}, new double[] {0, 2, 4, 2, 0});
        WidthScan scan = OverlapResult.scan(line, DrivingPattern.ROUND_AND_ROUND);
        assertThat(scan.intervals()).containsOnlyKeys(10.0, 15.0);
        assertThat(scan.atMost(10)).anyMatch(one -> one.from() < 12 && one.to() > 12);
        assertThat(scan.atMost(15).size()).isPositive();
    }
}
