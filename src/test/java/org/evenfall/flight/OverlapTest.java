package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
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

    /** Exact by geometry: a triangle whose half-rate points are 24 m apart is even at 24 m, and at 30 m has 80 % of the peak. */
    @ParameterizedTest
    @EnumSource(names = {"BACK_AND_FORTH", "ROUND_AND_ROUND"})
    void aTriangleIsEvenAtItsHalfRateWidth(DrivingPattern driving) {
        SpreadPattern triangle = new SpreadPattern(new double[] {-24, 0, 24}, new double[] {0, 1, 0});
        Overlap overlap = new Overlap(triangle, driving);
        assertThat(overlap.cvPercent(24)).isCloseTo(0, within(1e-9));
        assertThat(mean(overlap, 30)).isCloseTo(0.8, within(1e-4));
        // 1 falling to 0.75 over 6 m, then flat to 15 m: mean 0.8, variance 0.0058333; n - 1 of 96 places
        assertThat(overlap.cvPercent(30)).isCloseTo(100 * Math.sqrt(0.0058333 * 96 / 95) / 0.8, within(0.01));
        // a quarter of the base is even again: more passes meet
        assertThat(overlap.cvPercent(12)).isCloseTo(0, within(1e-9));
    }

    private static double mean(Overlap overlap, double width) {
        return IntStream.range(0, 1000)
                .mapToDouble(i -> overlap.at(width, width * (i + 0.5) / 1000))
                .average()
                .orElseThrow();
    }

    /** Source: Fertilizer Australia: back and forth a side meets its own kind, round and round the opposite one. */
    @Test
    void backAndForthASideMeetsItsOwnKind() {
        // all on the right: driven back and forth every second gap gets double, the others nothing
        SpreadPattern right = new SpreadPattern(new double[] {0, 0.01, 9.99, 10}, new double[] {0, 1, 1, 0});
        Overlap back = new Overlap(right, DrivingPattern.BACK_AND_FORTH);
        assertThat(back.at(10, 5)).isCloseTo(2, within(1e-9));
        assertThat(back.at(10, -5)).isCloseTo(0, within(1e-9));
        Overlap round = new Overlap(right, DrivingPattern.ROUND_AND_ROUND);
        assertThat(round.at(10, 5)).isCloseTo(1, within(1e-9));
        assertThat(round.at(10, -5)).isCloseTo(1, within(1e-9));
    }

    @Test
    @Tag("slow")
    void aWidthGetsWhatOnePassGives() {
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

    /** By hand on the asymmetric pattern (−2: 1, 0: 3, 1: 2) at a width of 2.5 m, passes at −5, −2.5, 0, 2.5, 5. */
    @Test
    void anAsymmetricPatternByHand() {
        SpreadPattern pass = new SpreadPattern(new double[] {-2, 0, 1}, new double[] {1, 3, 2});
        Overlap round = new Overlap(pass, DrivingPattern.ROUND_AND_ROUND);
        // at 1: own 2; the pass at 2.5 gives its −1.5: 1.5
        assertThat(round.at(2.5, 1)).isCloseTo(3.5, within(1e-12));
        // at −1: own −1: 2; the pass at −2.5 would give its 1.5: nothing
        assertThat(round.at(2.5, -1)).isCloseTo(2, within(1e-12));
        Overlap back = new Overlap(pass, DrivingPattern.BACK_AND_FORTH);
        // at 1: own 2; the turned pass at 2.5 gives its 1.5: nothing
        assertThat(back.at(2.5, 1)).isCloseTo(2, within(1e-12));
        // at −1: own 2; the turned pass at −2.5 gives its −1.5: 1.5
        assertThat(back.at(2.5, -1)).isCloseTo(3.5, within(1e-12));
        // two widths on the field repeats, one width on it is the mirror image
        assertThat(back.at(2.5, 6)).isCloseTo(2, within(1e-12));
        assertThat(back.at(2.5, 3.5)).isCloseTo(3.5, within(1e-12));
        assertThat(back.at(2.5, -4)).isCloseTo(2, within(1e-12));
        assertThat(back.at(2.5, List.of(1.0, -1.0))).containsExactly(back.at(2.5, 1), back.at(2.5, -1));
        assertThat(new Overlap(pass, DrivingPattern.UNANSWERED).at(2.5, 1)).isEqualTo(back.at(2.5, 1));
    }

    @Test
    void theOutermostPositionsStillCount() {
        SpreadPattern slab = new SpreadPattern(new double[] {-3, 3}, new double[] {1, 1});
        Overlap overlap = new Overlap(slab, DrivingPattern.ROUND_AND_ROUND);
        // at 3 the pass at 0 ends and the pass at 6 begins
        assertThat(overlap.at(6, 3)).isEqualTo(2);
        assertThat(overlap.at(6, -3)).isEqualTo(2);
        assertThat(overlap.at(6, 2.999)).isEqualTo(1);
    }

    @Test
    void placesOverOneRepeatFromTheFirstPositionRightOfTheMiddle() {
        SpreadPattern pass = new SpreadPattern(new double[] {-3, -1, 1, 3}, new double[] {0, 1, 2, 0});
        assertThat(new Overlap(pass, DrivingPattern.ROUND_AND_ROUND).placesM(6)).containsExactly(1.0, 3.0, 5.0);
        assertThat(new Overlap(pass, DrivingPattern.BACK_AND_FORTH).placesM(6))
                .containsExactly(1.0, 3.0, 5.0, 7.0, 9.0, 11.0);
        // a width that the spacing does not divide, and one below two spacings
        assertThat(new Overlap(pass, DrivingPattern.ROUND_AND_ROUND).placesM(7)).containsExactly(1.0, 2.75, 4.5, 6.25);
        assertThat(new Overlap(pass, DrivingPattern.ROUND_AND_ROUND).placesM(1)).containsExactly(1.0, 1.5);
        SpreadPattern left = new SpreadPattern(new double[] {-3, -1}, new double[] {1, 1});
        assertThat(new Overlap(left, DrivingPattern.ROUND_AND_ROUND).placesM(4)).containsExactly(0.0, 2.0);
        SpreadPattern middle = new SpreadPattern(new double[] {-2, 0, 2}, new double[] {1, 1, 1});
        assertThat(new Overlap(middle, DrivingPattern.ROUND_AND_ROUND).placesM(4))
                .containsExactly(0.0, 2.0);
    }

    /** 1 + a cos over the width has a true CV of a/√2; with n − 1 of 96 places √(96/95) times that. */
    @Test
    void cvOfASlowWave() {
        int n = 2401;
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = -12 + 24.0 * i / (n - 1);
            y[i] = 1 + 0.2 * Math.cos(2 * Math.PI * x[i] / 24);
        }
        Overlap overlap = new Overlap(new SpreadPattern(x, y), DrivingPattern.ROUND_AND_ROUND);
        assertThat(overlap.cvPercent(24)).isCloseTo(14.1421 * Math.sqrt(96.0 / 95), within(1e-3));
    }

    @Test
    void aWidthOf0IsRefused() {
        Overlap overlap = new Overlap(
                new SpreadPattern(new double[] {-3, 3}, new double[] {1, 1}), DrivingPattern.ROUND_AND_ROUND);
        for (double width : new double[] {0, -1, Double.NaN}) {
            assertThatThrownBy(() -> overlap.at(width, 0)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
