package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.quantity.NumberReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTextTest {

    private static List<String> cells(String text) throws Exception {
        List<String> cells = new ArrayList<>();
        try (CSVParser parser = CsvText.parse(text, "t.csv", List.of("a", "b"))) {
            for (CSVRecord row : parser) {
                cells.add(row.get("a") + "|" + row.get("b") + "|" + parser.getCurrentLineNumber());
            }
        }
        return cells;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {"a,b|,", "a;b|;", "a\\tb|\\t", "a;b,c|;", "a\\tb,c|\\t", "a;b\\tc|;", "a|,"})
    void theHeaderLineShowsTheSeparator(String header, String separator) {
        String text = header.replace("\\t", "\t");
        assertThat(CsvText.separator(text + "\n1;2\t3,4\n"))
                .isEqualTo(separator.replace("\\t", "\t").charAt(0));
    }

    @Test
    void anEmptyTextHasACommaAndNoColumn() {
        assertThat(CsvText.separator("")).isEqualTo(',');
        assertThatThrownBy(() -> cells("")).hasMessageContaining("column a is missing");
    }

    @Test
    void theSameRowsWhateverSeparatesThem() throws Exception {
        for (String separator : List.of(",", ";", "\t")) {
            assertThat(cells("a,b\n1,x\n2,y\n".replace(",", separator))).containsExactly("1|x|2", "2|y|3");
        }
    }

    @Test
    void columnsInAnyOrderBlankLinesAndBlanksAroundCells() throws Exception {
        assertThat(cells(" b , a \r\n x , 1 \r\n\r\ny,2")).containsExactly("1|x|2", "2|y|4");
    }

    @Test
    void aSeparatorOrLineBreakInQuotesBelongsToTheCell() throws Exception {
        assertThat(cells("a,b\n\"1,5\",\"say \"\"x\"\"\"\n\"2\n3\",y\n"))
                .containsExactly("1,5|say \"x\"|2", "2\n3|y|4");
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstColumn() throws Exception {
        assertThat(cells("\ufeffa,b\n1,x\n")).containsExactly("1|x|2");
        assertThat(cells("a,b\n\ufeff1,x\n")).as("only at the start").containsExactly("\ufeff1|x|2");
    }

    @Test
    void aColumnTwiceOrMissingIsRefused() {
        assertThatThrownBy(() -> cells("a,b,c,b\n1,2,3,4\n"))
                .isInstanceOfSatisfying(InputFileException.class, refusal -> {
                    assertThat(refusal.place()).isEqualTo("line 1");
                    assertThat(refusal.problem()).isEqualTo("column b occurs twice");
                });
        assertThatThrownBy(() -> cells("a,c\n1,2\n")).hasMessage("t.csv: line 1: column b is missing; needed are a, b");
        assertThatThrownBy(() -> cells("A,b\n1,2\n")).hasMessageContaining("column a is missing");
    }

    @Test
    void placesAndReasons() {
        assertThat(CsvText.place(7, "width_m")).isEqualTo("line 7, column width_m");
        assertThat(CsvText.place(7, "")).isEqualTo("line 7");
        assertThat(CsvText.notANumber("1.250", new NumberReading.Ambiguous(1.25, 1250)))
                .contains("\"1.250\" could mean a thousand");
        assertThat(CsvText.notANumber("x", new NumberReading.NotANumber())).isEqualTo("\"x\" is not a number");
    }
}
