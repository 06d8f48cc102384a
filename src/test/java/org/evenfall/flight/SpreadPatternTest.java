package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpreadPatternTest {

    // uneven positions, no two amounts alike
    private static final SpreadPattern PATTERN =
            new SpreadPattern(new double[] {-8, -2, -1, 0.5, 4}, new double[] {1, 4, 2, 3, 5});

    @Test
    void straightLinesBetweenPositions() {
        assertThat(PATTERN.size()).isEqualTo(5);
        assertThat(PATTERN.leftmostM()).isEqualTo(-8);
        assertThat(PATTERN.rightmostM()).isEqualTo(4);
        assertThat(PATTERN.positionM(3)).isEqualTo(0.5);
        assertThat(PATTERN.amount(3)).isEqualTo(3);
        assertThat(PATTERN.positionsM()).containsExactly(-8.0, -2.0, -1.0, 0.5, 4.0);
        assertThat(PATTERN.amounts()).containsExactly(1.0, 4.0, 2.0, 3.0, 5.0);
        for (int i = 0; i < 5; i++) {
            assertThat(PATTERN.at(PATTERN.positionM(i))).isCloseTo(PATTERN.amount(i), within(1e-12));
        }
        assertThat(PATTERN.at(-5)).isCloseTo(2.5, within(1e-12));
        assertThat(PATTERN.at(-1.25)).isCloseTo(2.5, within(1e-12));
        assertThat(PATTERN.at(-0.7)).isCloseTo(2.2, within(1e-12));
        assertThat(PATTERN.at(3.3)).isCloseTo(4.6, within(1e-12));
    }

    @Test
    void nothingBeyondTheOutermost() {
        assertThat(PATTERN.at(Math.nextDown(-8.0))).isZero();
        assertThat(PATTERN.at(Math.nextUp(4.0))).isZero();
        assertThat(PATTERN.at(Double.NaN)).isZero();
    }

    /** By hand: 6 (1 + 4)/2 + (4 + 2)/2 + 1.5 (2 + 3)/2 + 3.5 (3 + 5)/2. */
    @Test
    void areaByHand() {
        assertThat(PATTERN.area()).isCloseTo(15 + 3 + 3.75 + 14, within(1e-12));
        assertThat(PATTERN.area(-100, 100)).isCloseTo(35.75, within(1e-12));
        assertThat(PATTERN.area(-5, -1.5)).isCloseTo(3 * 3.25 + 0.5 * 3.5, within(1e-12));
        assertThat(PATTERN.area(0.5, 4)).isCloseTo(14, within(1e-12));
        assertThat(PATTERN.area(1, 1)).isZero();
        assertThat(PATTERN.area(2, 1)).isZero();
    }

    @Test
    void wrongNumbersAreRefused() {
        double[] two = {0, 1};
        assertThat(new SpreadPattern(two, new double[] {0, 0}).area()).isZero();
        refused(new double[] {0}, new double[] {1});
        refused(two, new double[] {1});
        refused(new double[] {1, 1}, two);
        refused(new double[] {1, 0}, two);
        refused(two, new double[] {1, -Double.MIN_VALUE});
        refused(two, new double[] {Double.NaN, 1});
        refused(new double[] {0, Double.NaN}, two);
    }

    private static void refused(double[] positions, double[] amounts) {
        assertThatThrownBy(() -> new SpreadPattern(positions, amounts)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void laterChangesOfTheArraysDoNotReachIt() {
        double[] positions = {0, 1};
        double[] amounts = {1, 1};
        SpreadPattern pattern = new SpreadPattern(positions, amounts);
        positions[1] = 9;
        amounts[1] = 9;
        assertThat(pattern.area()).isEqualTo(1);
    }
}
