package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|12",
                "0,76|0.76",
                "0.76|0.76",
                ",5|0.5",
                ".5|0.5",
                "-3,5|-3.5",
                "\u22123,5|-3.5",
                "+4|4",
                "0,750|0.75",
                "0.750|0.75",
                "1,2500|1.25",
                "1250|1250",
                "1 250|1250",
                "1\u202f250|1250",
                "1'250|1250",
                "1\u2019250,5|1250.5",
                "1 250,75|1250.75",
                "1,250.75|1250.75",
                "1.250,75|1250.75",
                "1,250,000|1250000",
                "1.250.000|1250000",
                "1250,125|1250.125",
                "  28  |28"
            })
    void readsEitherHabit(String typed, double expected) {
        assertThat(NumberText.read(typed)).isEqualTo(new NumberReading.Value(expected));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,250", "1.250", "12,500", "999.000", "-1,250"})
    void asksBackWhatCouldBeAGroup(String typed) {
        assertThat(NumberText.read(typed))
                .isInstanceOfSatisfying(
                        NumberReading.Ambiguous.class,
                        ambiguous -> assertThat(ambiguous.asThousands()).isEqualTo(1000 * ambiguous.asDecimal()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"abc", "1,2,3", "1..2", "12 m", "1,25,000", "1.250,000,5", "--1", "1e3", ",", "1,250,00", "NaN"})
    void anythingElseIsNoNumber(String typed) {
        assertThat(NumberText.read(typed)).isEqualTo(new NumberReading.NotANumber());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\u00a0"})
    void blankIsEmpty(String typed) {
        assertThat(NumberText.read(typed)).isEqualTo(new NumberReading.Empty());
    }

    @Test
    void neverThrowsAndNeverInventsANumber() {
        Random random = new Random(20270401);
        String letters = "0123456789.,' -+\u00a0m";
        for (int i = 0; i < 20000; i++) {
            StringBuilder typed = new StringBuilder();
            for (int n = random.nextInt(9); n > 0; n--) {
                typed.append(letters.charAt(random.nextInt(letters.length())));
            }
            if (NumberText.read(typed.toString()) instanceof NumberReading.Value value) {
                assertThat(typed).containsPattern("\\d");
                assertThat(Double.isFinite(value.value())).isTrue();
            }
        }
    }

    @Test
    void whatIsPrintedCanBeTypedAgain() {
        Random random = new Random(7);
        for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMANY, Locale.FRANCE}) {
            for (int i = 0; i < 1000; i++) {
                double value = Math.rint(random.nextDouble() * 1e6) / 100;
                String printed = NumberFormats.decimals(value, 2, locale);
                assertThat(NumberText.read(printed)).as(printed).isEqualTo(new NumberReading.Value(value));
            }
        }
    }
}
