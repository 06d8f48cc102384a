package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class OverlapTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/flight/overlap.csv", numLinesToSkip = 1)
    void oneDirectionAsPublished(int row, double bout, String amounts, String overlapped, String source) {
        assertThat(source).isNotBlank();
        double[] positions = {-35, -25, -15, -5, 5, 15, 25};
        SpreadPattern line = new SpreadPattern(positions, numbers(amounts));
        Overlap overlap = new Overlap(line, DrivingPattern.ROUND_AND_ROUND);
        List<Double> found = overlap.at(bout, overlap.placesM(bout));
        double[] expected = numbers(overlapped);
        assertThat(found).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found.get(i)).isCloseTo(expected[i], within(0.0051));
        }
        assertThat(found.stream().mapToDouble(v -> v).sum())
                .isCloseTo(Arrays.stream(numbers(amounts)).sum(), within(1e-9));
        // back and forth the field repeats after two widths, with twice the sum
        Overlap turned = new Overlap(line, DrivingPattern.BACK_AND_FORTH);
        assertThat(turned.at(bout, turned.placesM(bout)).stream()
                        .mapToDouble(v -> v)
                        .sum())
                .isCloseTo(2 * Arrays.stream(numbers(amounts)).sum(), within(1e-9));
    }

    private static double[] numbers(String words) {
        return Arrays.stream(words.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /** Exact by geometry: a triangle whose half-rate points lie 24 m apart lies flat at 24 m, and at 30 m with 80 % of peak. */
    @ParameterizedTest
    @EnumSource(names = {"BACK_AND_FORTH", "ROUND_AND_ROUND"})
    void aTriangleLiesFlatAtItsHalfRateWidth(DrivingPattern driving) {
        SpreadPattern triangle = new SpreadPattern(new double[] {-24, 0, 24}, new double[] {0, 1, 0});
        Overlap overlap = new Overlap(triangle, driving);
        assertThat(overlap.cvPercent(24)).isCloseTo(0, within(1e-9));
        assertThat(mean(overlap, 30)).isCloseTo(0.8, within(1e-4));
        // 1 falling to 0.75 over 6 m, then flat to 15 m: mean 0.8, variance 0.0058333; n - 1 of 96 places
        assertThat(overlap.cvPercent(30)).isCloseTo(100 * Math.sqrt(0.0058333 * 96 / 95) / 0.8, within(0.01));
        // a third of the base again lies flat: three passes meet
        assertThat(overlap.cvPercent(12)).isCloseTo(0, within(1e-9));
        WidthScan scan = WidthScan.of(triangle, driving, 8, 40, List.of(10.0, 15.0));
        assertThat(scan.atMost(10)).anyMatch(one -> one.from() < 24 && one.to() > 24);
        // a slab 24 m wide lies flat at 24, 12 and 8 m and doubles up between: every interval is told
        SpreadPattern slab = new SpreadPattern(new double[] {-12.5, -11.5, 11.5, 12.5}, new double[] {0, 1, 1, 0});
        List<WidthScan.Interval> flat =
                WidthScan.of(slab, driving, 7, 30, List.of(10.0)).atMost(10);
        assertThat(flat).hasSize(3);
        for (int i = 0; i < 3; i++) {
            double width = 24.0 / (3 - i);
            assertThat(flat.get(i).from()).isLessThan(width).isGreaterThan(width - 1);
            assertThat(flat.get(i).to()).isGreaterThan(width).isLessThan(width + 1);
        }
        for (WidthScan.Interval one : scan.atMost(15)) {
            assertThat(overlap.cvPercent(one.from())).isLessThanOrEqualTo(15.0001);
            assertThat(overlap.cvPercent(one.to())).isLessThanOrEqualTo(15.0001);
        }
    }

    private static double mean(Overlap overlap, double width) {
        return Overlap.closePlacesM(width).stream()
                .mapToDouble(x -> overlap.at(width, x))
                .average()
                .orElseThrow();
    }

    @Test
    void backAndForthASideMeetsItsOwnKind() {
        // all on the right: driven back and forth it lies double beside every second gap
        SpreadPattern right = new SpreadPattern(new double[] {0, 0.01, 9.99, 10}, new double[] {0, 1, 1, 0});
        Overlap back = new Overlap(right, DrivingPattern.BACK_AND_FORTH);
        assertThat(back.at(10, 5)).isCloseTo(2, within(1e-9));
        assertThat(back.at(10, -5)).isCloseTo(0, within(1e-9));
        Overlap round = new Overlap(right, DrivingPattern.ROUND_AND_ROUND);
        assertThat(round.at(10, 5)).isCloseTo(1, within(1e-9));
        assertThat(round.at(10, -5)).isCloseTo(1, within(1e-9));
    }

    @Test
    void whatIsLaidOnAWidthIsWhatOnePassLays() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            int n = 3 + random.nextInt(40);
            double[] x = new double[n];
            double[] y = new double[n];
            double at = -30 * random.nextDouble();
            for (int k = 0; k < n; k++) {
                x[k] = at;
                at += 0.2 + 2 * random.nextDouble();
                y[k] = k == 0 || k == n - 1 ? 0 : random.nextDouble();
            }
            SpreadPattern pass = new SpreadPattern(x, y);
            DrivingPattern driving =
                    random.nextBoolean() ? DrivingPattern.BACK_AND_FORTH : DrivingPattern.ROUND_AND_ROUND;
            double width = 5 + 30 * random.nextDouble();
            Overlap overlap = new Overlap(pass, driving);
            // a fine sum over two widths, after which both ways of driving repeat
            int cells = 40_000;
            double sum = 0;
            for (int k = 0; k < cells; k++) {
                sum += overlap.at(width, 2 * width * (k + 0.5) / cells);
            }
            assertThat(sum * 2 * width / cells).isCloseTo(2 * pass.area(), within(1e-3 * pass.area()));
            double spot = 50 * random.nextDouble();
            double period = driving == DrivingPattern.ROUND_AND_ROUND ? width : 2 * width;
            assertThat(overlap.at(width, spot)).isCloseTo(overlap.at(width, spot + period), within(1e-9));
        }
    }
}
