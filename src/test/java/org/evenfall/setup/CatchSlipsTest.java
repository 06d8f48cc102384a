package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.setup.CatchSlips.Catch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Catches that look like a typing error; the catch in question is one of seven, the others keep the median. */
class CatchSlipsTest {

    private static List<String> found(String text, double grams, double median) {
        List<Catch> catches = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            catches.add(new Catch("-", median, "/others/" + i));
        }
        catches.add(new Catch(text, grams, "/here"));
        return lines(CatchSlips.of(catches));
    }

    /**
     * Checked from 1.6 times the median on (42 / 27 = 1.56 is not, 32 / 20 is); the swapped number must come within 20 % of
     * it: 16 / 20 does, 15 / 20 not, 24 / 20 does, 25 / 20 not.
     */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "42, 27, -",
                "32, 20, 23",
                "31, 20, -",
                "61, 20, 16",
                "51, 20, -",
                "42, 20, 24",
                "52, 20, -",
                "13, 34, 31",
                "13, 20, -",
                "211, 117, 121",
                "0.52, 0.25, 0.25",
                "'0,52', 0.25, '0,25'",
                "81, 18, 18",
                "99, 20, -",
                "4.1, 20, -"
            })
    void swappedDigits(String text, double median, String swapped) {
        double grams = Double.parseDouble(text.replace(',', '.'));
        assertThat(found(text, grams, median))
                .isEqualTo(
                        swapped == null
                                ? List.of()
                                : List.of("WARNING TRAYS trays.swapped at /here '" + text + "' '" + swapped + "'"));
    }

    @Test
    void swappedDigitsOfAHeightAreHeldAgainstGrams() {
        // 0.2 g a millimetre: 211 mm are 42.2 g, 121 mm 24.2 g
        assertThat(found("211", 42.2, 24)).containsExactly("WARNING TRAYS trays.swapped at /here '211' '121'");
    }

    /** More than 5 times the median of 20 g, or less than a fifth of it; 200.5 is no 020.5 with its digits swapped. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"100, -", "101, 101g~1", "4, -", "3.9, 3.9g~1", "0, 0g~1", "200.5, 200.5g~1"})
    void oneOrderOfMagnitude(String text, String written) {
        assertThat(found(text, Double.parseDouble(text), 20))
                .isEqualTo(
                        written == null
                                ? List.of()
                                : List.of("WARNING TRAYS trays.slip at /here " + written + " 20g~1"));
    }

    @Test
    void aSumHasNoSwappedDigits() {
        assertThat(found("70+11", 81, 18)).isEmpty();
        assertThat(found("70+31", 101, 20)).containsExactly("WARNING TRAYS trays.slip at /here 101g~1 20g~1");
    }

    @Test
    void mostTraysEmptyGiveNoMedianToCompareWith() {
        assertThat(lines(CatchSlips.of(List.of(
                        new Catch("0", 0, "/0"),
                        new Catch("51", 51, "/1"),
                        new Catch("0", 0, "/2"),
                        new Catch("0", 0, "/3"),
                        new Catch("15", 15, "/4")))))
                .isEmpty();
    }

    @Test
    void theMedianIsThatOfTheSortedCatches() {
        // sorted 10, 12, 18, 19, 81: median 18
        List<Catch> catches = List.of(
                new Catch("81", 81, "/0"),
                new Catch("10", 10, "/1"),
                new Catch("19", 19, "/2"),
                new Catch("12", 12, "/3"),
                new Catch("18", 18, "/4"));
        assertThat(lines(CatchSlips.of(catches))).containsExactly("WARNING TRAYS trays.swapped at /0 '81' '18'");
    }
}
