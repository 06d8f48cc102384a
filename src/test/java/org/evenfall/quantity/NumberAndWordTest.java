package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A number and the word typed behind it, and the unit that such a word is. */
class NumberAndWordTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "36 yd; 36; yd",
                "36yd; 36; yd",
                "' 36,0  m '; 36,0; m",
                "-4.5 m; -4.5; m",
                "1 250 kg; 1 250; kg",
                "740 kg/m³; 740; kg/m³",
                "400 per t; 400; per t",
                "7 trays (new); 7; trays (new)"
            })
    void numberThenWord(String text, String number, String word) {
        assertThat(NumberAndWord.of(text)).contains(new NumberAndWord(number, word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "36", "36,0", "wide", "m 36", "3..4 m", "+ m", "5 + 3"})
    void otherwiseThereIsNone(String text) {
        assertThat(NumberAndWord.of(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"28 ft, 28, FT", "28ft, 28, FT", "28 yd, 28 yd, M", "28, 28, M", "wide, wide, M"})
    void theUnitBehindTheNumberReplacesTheOneChosen(String text, String number, Unit unit) {
        assertThat(new EnteredQuantity(text, Unit.M).withUnitFromText()).isEqualTo(new EnteredQuantity(number, unit));
    }

    /** What is proposed for "1,000" reads in one way, and as the decimal. */
    @Test
    void theProposedDecimalsReadInOneWay() {
        for (int thousandths = 1000; thousandths < 10000; thousandths++) {
            String typed = NumberFormats.decimals(thousandths / 1000.0, 3, Locale.ROOT);
            NumberReading.Ambiguous twice = (NumberReading.Ambiguous) NumberText.read(typed);
            String proposed = NumberFormats.decimals(twice.asDecimal(), twice.decimals(), Locale.ROOT);
            assertThat(NumberText.read(proposed)).isEqualTo(new NumberReading.Value(thousandths / 1000.0));
            assertThat(proposed.length()).isLessThanOrEqualTo(thousandths % 10 == 0 ? 4 : 6);
        }
    }
}
