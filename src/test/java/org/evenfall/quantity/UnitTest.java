package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/quantity/conversions.csv", numLinesToSkip = 1)
    void convertsAsTheStandardSays(String from, String to, double factor, String source) {
        assertThat(source).isNotBlank();
        double converted = Unit.valueOf(from).to(Unit.valueOf(to), 1);
        assertThat(converted).isCloseTo(factor, within(1e-10 * factor));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void thereAndBack(Unit unit) {
        for (Unit other : Unit.values()) {
            if (other.dimension() == unit.dimension()) {
                assertThat(other.to(unit, unit.to(other, 12.5))).isCloseTo(12.5, within(1e-9));
            }
        }
        assertThat(Unit.ofSymbol(unit.symbol())).contains(unit);
    }

    @Test
    void unlikeDimensionsAreAProgrammingError() {
        assertThatThrownBy(() -> Unit.M.to(Unit.KG, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Unit.UNITS.to(Unit.KG_PER_HA, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "28 m|28|M",
                "0,76 kg/L|0,76|KG_PER_L",
                "590 per t|590|PER_T",
                "about 12 km/h|about 12|KM_PER_H",
                "85|85|NONE",
                "twelve|twelve|NONE",
                "m|''|M",
                "1 250 kg|1 250|KG"
            })
    void oneLineHoldsTextAndUnit(String line, String text, Unit unit) {
        EnteredQuantity typed = EnteredQuantity.parse(line);
        assertThat(typed).isEqualTo(new EnteredQuantity(text, unit));
        assertThat(typed).hasToString(line);
    }
}
