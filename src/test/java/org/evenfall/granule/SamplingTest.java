package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SamplingTest {

    @ParameterizedTest
    @CsvSource({"1, 1", "3, 3", "4, 4", "5, 4", "16, 4", "17, 5", "24, 5", "25, 5", "26, 6", "100, 10", "101, 11"})
    void theRootRoundedUpAtLeastFourAtMostAll(int delivered, int sampled) {
        assertThat(Sampling.bags(delivered)).isEqualTo(sampled);
    }

    @Test
    void refusesNone() {
        assertThatThrownBy(() -> Sampling.bags(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least 1");
    }
}
