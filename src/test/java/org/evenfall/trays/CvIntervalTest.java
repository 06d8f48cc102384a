package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CvIntervalTest {

    /** Source (from memory): Vangel 1996, the formula. The library that computed the values is named in the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/trays/cv-interval.csv", numLinesToSkip = 1)
    void asComputedWithAReferenceLibrary(
            int n, double cvPercent, double low, double high, double atMost15, String source) {
        assertThat(source).isNotBlank();
        CvInterval interval = new CvInterval(n);
        assertThat(interval.intervalPercent(cvPercent).low()).isCloseTo(low, within(1e-6));
        assertThat(interval.intervalPercent(cvPercent).high()).isCloseTo(high, within(1e-6));
        assertThat(interval.probabilityAtMost(15, cvPercent)).isCloseTo(atMost15, within(1e-7));
    }

    @Test
    void theProbabilityAgreesWithTheInterval() {
        CvInterval interval = new CvInterval(7);
        Interval percent = interval.intervalPercent(12);
        assertThat(interval.probabilityAtMost(percent.high(), 12)).isCloseTo(0.95, within(1e-6));
        assertThat(interval.probabilityAtMost(percent.low(), 12)).isCloseTo(0.05, within(1e-6));
    }

    /** Coverage by simulation of independent normal catches, 90.0 %. */
    @Test
    @Tag("slow")
    void theIntervalCoversNineTimesInTen() {
        Random random = new Random(1996);
        int covered = 0;
        int rounds = 40_000;
        CvInterval interval = new CvInterval(7);
        for (int i = 0; i < rounds; i++) {
            List<Double> values = new ArrayList<>();
            for (int k = 0; k < 7; k++) {
                values.add(1 + 0.12 * random.nextGaussian());
            }
            if (interval.intervalPercent(UniformityCalculator.cvPercent(values)).contains(12)) {
                covered++;
            }
        }
        assertThat(covered / (double) rounds).isCloseTo(0.900, within(0.008));
    }

    @Test
    void equalCatchesAreSureAndHugeCvsAreCapped() {
        CvInterval interval = new CvInterval(7);
        assertThat(interval.intervalPercent(0)).isEqualTo(new Interval(0, 0));
        assertThat(interval.probabilityAtMost(10, 0)).isEqualTo(1);
        // the lower end still has a number where the upper one has none
        assertThat(interval.intervalPercent(100).high()).isEqualTo(CvInterval.HIGHEST_PERCENT);
        assertThat(interval.intervalPercent(100).low()).isBetween(50.0, 100.0);
    }

    @Test
    void twoCatchesHaveNoInterval() {
        assertThatThrownBy(() -> new CvInterval(2)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new CvInterval(3).n()).isEqualTo(3);
    }
}
