package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Product and nitrogen of passes, fields and a season, worked out by hand. */
class PassUseTest {

    private static final double SAME = 1e-9;

    /** 2 175 kg on 12.5 ha are 174 kg/ha; 46 % of it are 80.04 kg/ha, 1 000.5 kg in all; 174 against 160 is 8.75 % more. */
    @Test
    void onePass() {
        PassUse pass = PassUse.of(12.5, 2175, 46.0, 160.0);
        assertThat(pass.productKgPerHa()).isCloseTo(174, within(SAME));
        assertThat(pass.nitrogenKgPerHa()).isCloseTo(80.04, within(SAME));
        assertThat(pass.nitrogenKg()).isCloseTo(1000.5, within(SAME));
        assertThat(pass.deviationPercent()).isCloseTo(8.75, within(SAME));
    }

    @Test
    void whatIsNotKnownIsEmpty() {
        PassUse pass = PassUse.of(12.5, 2175, null, null);
        assertThat(pass.productKgPerHa()).isCloseTo(174, within(SAME));
        assertThat(pass.nitrogenKgPerHa()).isNull();
        assertThat(pass.nitrogenKg()).isNull();
        assertThat(pass.deviationPercent()).isNull();
    }

    @ParameterizedTest
    @CsvSource({"0, 10", "-1, 10", "NaN, 10", "1, -1", "1, NaN"})
    void impossibleAmountsAreRefused(double areaHa, double productKg) {
        assertThatThrownBy(() -> PassUse.of(areaHa, productKg, 46.0, 160.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("areaHa must be above 0");
    }

    /** 10 ha at 50 kg N/ha, then 4 of them at 30: 500 + 120 kg on 10 ha are 62 kg/ha, not 80. */
    @Test
    void aPassOverAPartCountsByItsShare() {
        FieldUse field = FieldUse.of(List.of(PassUse.of(10, 1250, 40.0, null), PassUse.of(4, 300, 40.0, null)));
        assertThat(field.passes()).isEqualTo(2);
        assertThat(field.areaHa()).isEqualTo(10);
        assertThat(field.productKg()).isCloseTo(1550, within(SAME));
        assertThat(field.nitrogenKg()).isCloseTo(620, within(SAME));
        assertThat(field.nitrogenKgPerHa()).isCloseTo(62, within(SAME));
    }

    /** The order of the passes does not matter. */
    @Test
    void thePartMayComeFirst() {
        FieldUse field = FieldUse.of(List.of(PassUse.of(4, 300, 40.0, null), PassUse.of(10, 1250, 40.0, null)));
        assertThat(field.areaHa()).isEqualTo(10);
        assertThat(field.nitrogenKgPerHa()).isCloseTo(62, within(SAME));
    }

    @Test
    void nitrogenThatIsNotKnownCountsInNoSum() {
        PassUse known = PassUse.of(8, 1000, 46.0, null);
        PassUse unknown = PassUse.of(8, 700, null, null);
        assertThat(FieldUse.of(List.of(unknown, known)).nitrogenKg()).isCloseTo(460, within(SAME));
        assertThat(FieldUse.of(List.of(unknown)).nitrogenKg()).isNull();
        assertThat(FieldUse.of(List.of(unknown)).nitrogenKgPerHa()).isNull();
        assertThat(FieldUse.of(List.of(unknown)).productKg()).isEqualTo(700);
        assertThatThrownBy(() -> FieldUse.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    /** Ground that was spread twice counts twice in the area of all passes. */
    @Test
    void theSeasonAddsUp() {
        SeasonUse season = SeasonUse.of(List.of(PassUse.of(10, 1250, 40.0, null), PassUse.of(4.5, 300, 46.0, null)));
        assertThat(season.passes()).isEqualTo(2);
        assertThat(season.spreadHa()).isCloseTo(14.5, within(SAME));
        assertThat(season.productKg()).isCloseTo(1550, within(SAME));
        assertThat(season.nitrogenKg()).isCloseTo(638, within(SAME));
        assertThat(SeasonUse.of(List.of())).isEqualTo(new SeasonUse(0, 0, 0, null));
    }
}
