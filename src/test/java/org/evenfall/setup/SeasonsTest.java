package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonsTest {

    @ParameterizedTest
    @CsvSource({"2027-01-01, 2027", "2027-09-30, 2027", "2027-10-01, 2028", "2027-12-31, 2028"})
    void theSeasonChangesInOctober(LocalDate day, int season) {
        assertThat(Seasons.of(day)).isEqualTo(season);
    }
}
