package org.evenfall.wizard.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which answer a key chooses. */
class ChoiceKeysTest {

    private static final List<String> ANSWERS = List.of("Back and forth", "round", "blown", "other");

    @ParameterizedTest
    @CsvSource({
        "1, -1, 0",
        "4, 0, 3",
        "4, 3, 3",
        "b, -1, 0",
        "B, 0, 2",
        "b, 2, 0",
        "b, 1, 2",
        "r, 1, 1",
        "R, 0, 1",
        "o, 2, 3"
    })
    void chooses(String typed, int at, int index) {
        assertThat(keys(ANSWERS, Locale.ENGLISH).answer(typed, at)).hasValue(index);
    }

    @ParameterizedTest
    @CsvSource({"0", "5", "9", "x", "' '", "'\r'", "-", "''", "ab"})
    void choosesNothing(String typed) {
        assertThat(keys(ANSWERS, Locale.ENGLISH).answer(typed, 0)).isEqualTo(OptionalInt.empty());
    }

    /** Letters are compared as in the language of the words: in Turkish the capital of i has a dot. */
    @Test
    void lettersAreThoseOfTheLanguage() {
        assertThat(keys(List.of("evet", "\u0130ki"), Locale.forLanguageTag("tr"))
                        .answer("i", 0))
                .hasValue(1);
        assertThat(keys(List.of("nein", "Über"), Locale.GERMAN).answer("ü", 0)).hasValue(1);
    }

    private static ChoiceKeys keys(List<String> answers, Locale locale) {
        return new ChoiceKeys(answers, locale, index -> {});
    }
}
