package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.evenfall.granule.ProductForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RankContextTest {

    @Test
    void usualValuesForWhatIsNotKnown() {
        assertThat(RankContext.of(28, null, null, null, null, "x"))
                .isEqualTo(new RankContext(28, 0.40, 850, 850, 0.75, "x", null, false));
        assertThat(RankContext.of(28, 0.42, 900.0, 950.0, 0.8, "").reaching(36.0, true))
                .isEqualTo(new RankContext(28, 0.42, 900, 950, 0.8, "", 36.0, true));
    }

    @ParameterizedTest
    @CsvSource({"899, 900", "900, 900", "901, 901"})
    void theHighestDiscSpeedIsAtLeastTheOneInUse(double highest, double taken) {
        assertThat(RankContext.of(28, 0.42, 900.0, highest, 0.8, "").discRpmHighest())
                .isEqualTo(taken);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.4, 850, 850, 0.75, 36, tramlineWidthM",
        "28, 0, 850, 850, 0.75, 36, discRadiusM",
        "28, 0.4, 0, 850, 0.75, 36, discRpm",
        "28, 0.4, 850, 849, 0.75, 36, discRpmHighest",
        "28, 0.4, 850, 850, 0, 36, heightOverCropM",
        "28, 0.4, 850, 850, 0.75, 0, widestHandbookWidthM"
    })
    void refusesTheImpossible(
            double width, double radius, double rpm, double highest, double height, double handbook, String name) {
        assertThatThrownBy(() -> new RankContext(width, radius, rpm, highest, height, "", handbook, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(name);
    }

    @Test
    void aCandidateHasADensityAboveZero() {
        assertThatThrownBy(() -> new Candidate(ProductForm.OTHER, 0.0, 0, null))
                .hasMessageContaining("bulkDensityKgPerL");
        assertThatThrownBy(() -> new Candidate(ProductForm.OTHER, 0.7, -0.1, null))
                .hasMessageContaining("bulkDensitySe");
        assertThat(new Candidate(ProductForm.OTHER, null, 0, null).measured()).isFalse();
        assertThat(new Candidate(ProductForm.OTHER, 0.7, 0, null).measured()).isTrue();
        assertThat(new Candidate(ProductForm.OTHER, null, 0, Examples.sizes(3)).measured())
                .isTrue();
    }
}
