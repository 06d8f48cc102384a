package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScatterTest {

    @Test
    void nothingWithoutRepeats() {
        assertThat(Scatter.share(List.of())).isEmpty();
        assertThat(Scatter.share(List.of(List.of(13.0), List.of(12.0), List.of())))
                .isEmpty();
    }

    /** Source (from memory): c₄ and d₂ of control charts: d₂ = 1.128 for two values. */
    @Test
    void ofTwoValuesTheRangeOverD2() {
        assertThat(Scatter.share(List.of(List.of(97.0, 103.0))).getAsDouble()).isCloseTo(0.06 / 1.128, within(2e-5));
    }

    /** Source (from memory): c₄ and d₂ of control charts: c₄ of 3, 4, 5 values, here with a sample standard deviation of 1. */
    @ParameterizedTest
    @CsvSource({"3, 0.8862", "4, 0.9213", "5, 0.9400"})
    void theSampleStandardDeviationOverC4(int n, double c4) {
        List<Double> values = new ArrayList<>();
        double mean = (n - 1) / 2.0;
        double sd = Math.sqrt(n * (n + 1) / 12.0);
        for (int i = 0; i < n; i++) {
            values.add(100 + (i - mean) / sd);
        }
        assertThat(Scatter.share(List.of(values)).getAsDouble()).isCloseTo(0.01 / c4, within(1e-6));
    }

    /** Left about 20, right about 12 kg: the difference of the sides is no scatter. (2 × 0.02² + 1 × 0.01²·2) pooled. */
    @Test
    void groupsMayHaveDifferentMeans() {
        double share = Scatter.share(List.of(List.of(19.6, 20.0, 20.4), List.of(11.88, 12.12)))
                .getAsDouble();
        double pooled = Math.sqrt((2 * 0.02 * 0.02 + 0.0002) / 3);
        assertThat(share).isCloseTo(pooled / 0.9213, within(1e-6));
    }

    /** In the mean of many seeded draws the true scatter, 2 %, comes out; the sample standard deviation alone reads 11 % low. */
    @Test
    void itIsUnbiased() {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(41);
        var normal = ZigguratSampler.NormalizedGaussian.of(random);
        double sum = 0;
        int draws = 20_000;
        for (int i = 0; i < draws; i++) {
            List<Double> left = List.of(15 * (1 + 0.02 * normal.sample()), 15 * (1 + 0.02 * normal.sample()));
            List<Double> right = List.of(11 * (1 + 0.02 * normal.sample()), 11 * (1 + 0.02 * normal.sample()));
            sum += Scatter.share(List.of(left, right)).getAsDouble();
        }
        assertThat(sum / draws).isCloseTo(0.02, within(0.0003));
    }
}
