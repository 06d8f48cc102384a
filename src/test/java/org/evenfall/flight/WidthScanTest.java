package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WidthScanTest {

    /** A slab 24 m wide is even at 24, 12 and 8 m and doubles up between: every interval is given. */
    private static final SpreadPattern SLAB =
            new SpreadPattern(new double[] {-12.5, -11.5, 11.5, 12.5}, new double[] {0, 1, 1, 0});

    @ParameterizedTest
    @EnumSource(names = {"BACK_AND_FORTH", "ROUND_AND_ROUND"})
    void everyIntervalEndsWhereTheLimitIsReached(DrivingPattern driving) {
        WidthScan scan = WidthScan.of(SLAB, driving, 7, 30, List.of(10.0, 15.0));
        Overlap overlap = new Overlap(SLAB, driving);
        assertThat(scan.atMost(10)).hasSize(3);
        assertThat(scan.atMost(15)).hasSizeGreaterThanOrEqualTo(3);
        for (int i = 0; i < 3; i++) {
            double width = 24.0 / (3 - i);
            WidthScan.Interval one = scan.atMost(10).get(i);
            assertThat(one.from()).isLessThan(width).isGreaterThan(width - 1);
            assertThat(one.to()).isGreaterThan(width).isLessThan(width + 1);
        }
        assertThat(ends(overlap, scan.atMost(10), 10)).isEqualTo(6);
        assertThat(ends(overlap, scan.atMost(15), 15)).isGreaterThanOrEqualTo(5);
    }

    /** Ends that are not those of the scan. */
    private static int ends(Overlap overlap, List<WidthScan.Interval> intervals, double limit) {
        int ends = 0;
        for (WidthScan.Interval one : intervals) {
            if (one.from() > 7) {
                assertThat(overlap.cvPercent(one.from())).isBetween(limit - 1e-3, limit);
                assertThat(overlap.cvPercent(one.from() - 1e-6)).isGreaterThan(limit);
                ends++;
            }
            if (one.to() < 30) {
                assertThat(overlap.cvPercent(one.to())).isBetween(limit - 1e-3, limit);
                assertThat(overlap.cvPercent(one.to() + 1e-6)).isGreaterThan(limit);
                ends++;
            }
        }
        return ends;
    }

    @Test
    void anIntervalMayBeginOrEndWithTheScan() {
        WidthScan scan = WidthScan.of(SLAB, DrivingPattern.ROUND_AND_ROUND, 12, 24, List.of(10.0, 15.0));
        assertThat(scan.atMost(10)).hasSize(2);
        assertThat(scan.atMost(10).get(0).from()).isEqualTo(12);
        assertThat(scan.atMost(10).get(1).to()).isEqualTo(24);
    }

    @Test
    void theWidthsAreEvenAndEachHasItsCv() {
        WidthScan scan = WidthScan.of(SLAB, DrivingPattern.BACK_AND_FORTH, 6, 30, List.of(10.0, 15.0));
        assertThat(scan.widths()).hasSize(241);
        assertThat(scan.widths().get(0)).isEqualTo(6);
        assertThat(scan.widths().get(1)).isCloseTo(6.1, within(1e-12));
        assertThat(scan.widths().get(240)).isEqualTo(30);
        Overlap overlap = new Overlap(SLAB, DrivingPattern.BACK_AND_FORTH);
        for (int i : new int[] {0, 57, 240}) {
            assertThat(scan.cvPercent().get(i))
                    .isEqualTo(overlap.cvPercent(scan.widths().get(i)));
        }
    }

    @Test
    void withoutWidthsFromAnEighthOfTheReachToAllOfIt() {
        WidthScan scan = WidthScan.of(SLAB, DrivingPattern.ROUND_AND_ROUND, List.of(10.0, 15.0));
        assertThat(scan.widths().get(0)).isCloseTo(25.0 / 8, within(1e-12));
        assertThat(scan.widths().get(240)).isCloseTo(25, within(1e-12));
    }

    @Test
    void aPatternThatGivesNothingIsEvenNowhere() {
        SpreadPattern nothing = new SpreadPattern(new double[] {-1, 1}, new double[] {0, 0});
        WidthScan scan = WidthScan.of(nothing, DrivingPattern.ROUND_AND_ROUND, List.of(10.0, 15.0));
        assertThat(scan.atMost(15)).isEmpty();
        assertThat(scan.cvPercent()).allMatch(cv -> Double.isNaN(cv));
    }

    @Test
    void widthsInTheWrongOrderAreRefused() {
        assertThat(WidthScan.of(SLAB, DrivingPattern.ROUND_AND_ROUND, Double.MIN_NORMAL + 5, 6, List.of(10.0))
                        .widths())
                .isNotEmpty();
        for (double[] widths : new double[][] {{0, 5}, {-1, 5}, {5, 5}, {6, 5}, {Double.NaN, 5}, {5, Double.NaN}}) {
            assertThatThrownBy(() ->
                            WidthScan.of(SLAB, DrivingPattern.ROUND_AND_ROUND, widths[0], widths[1], List.of(10.0)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("narrowest");
        }
    }
}
