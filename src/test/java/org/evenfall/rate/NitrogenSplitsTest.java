package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The nitrogen of a season by pass. */
class NitrogenSplitsTest {

    @Test
    void thePassesAddUp() {
        NitrogenSplits splits = NitrogenSplits.of(List.of(50.0, 80.0, 40.5), 80.0);
        assertThat(splits.totalKgPerHa()).isCloseTo(170.5, within(1e-12));
        assertThat(splits.passesKgPerHa()).containsExactly(50.0, 80.0, 40.5);
        assertThat(splits.thisPassNumbers()).containsExactly(2);
    }

    /** Within 1 kg/ha, both sides of the limit. */
    @ParameterizedTest
    @CsvSource({"78.9, false", "79, true", "80, true", "81, true", "81.1, false"})
    void theSameRateIsThisPass(double plannedKgPerHa, boolean found) {
        assertThat(NitrogenSplits.of(List.of(80.0), plannedKgPerHa).thisPassNumbers())
                .hasSize(found ? 1 : 0);
    }

    @Test
    void severalAlikeAreAllNamedAndNoneWithoutAPlan() {
        assertThat(NitrogenSplits.of(List.of(60.0, 40.0, 60.0), 60.5).thisPassNumbers())
                .containsExactly(1, 3);
        assertThat(NitrogenSplits.of(List.of(60.0), null).thisPassNumbers()).isEmpty();
    }

    @Test
    void onlyPassesAboveNought() {
        assertThatThrownBy(() -> NitrogenSplits.of(List.of(), 60.0)).hasMessageContaining("empty");
        assertThatThrownBy(() -> NitrogenSplits.of(List.of(50.0, 0.0), 60.0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> NitrogenSplits.of(List.of(Double.NaN), 60.0)).hasMessageContaining("above 0");
    }
}
