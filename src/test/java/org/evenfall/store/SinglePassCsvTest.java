package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenfall.flight.SpreadPattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SinglePassCsvTest {

    private static SpreadPattern read(String text) throws InputFileException {
        return SinglePassCsv.read(text.replace("\\n", "\n").replace("\\t", "\t"), "line.csv");
    }

    private static String trays(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> i - 3 + "," + (i + 1))
                .collect(Collectors.joining("\n", "position,amount\n", "\n"));
    }

    @Test
    void rowsInAnyOrderBecomeARisingPattern() throws Exception {
        SpreadPattern pattern = read("position,amount\n4,1.5\n-8,0.25\n-2,6\n1.250,7e-1\n");
        assertThat(pattern.positionsM()).containsExactly(-8.0, -2.0, 1.25, 4.0);
        assertThat(pattern.amounts()).containsExactly(0.25, 6.0, 0.7, 1.5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "position;amount\n-8;0,25\n0;6\n4,5;1,5\n",
                "amount\tposition\n0,25\t-8\n6\t0\n1,5\t4,5\n",
                "position,amount\n-8,0.25\n0,6\n4.5,1.5\n",
                "\ufeffposition,amount,remark\n-8,.25,x\n\n0,6.\n+4.5,1.5,y",
                "position,amount\n\"-8\",\"0,25\"\n0,6\n\"4,5\",1.5\n"
            })
    void theSameLineInEverySpelling(String text) throws Exception {
        SpreadPattern pattern = SinglePassCsv.read(text, "line.csv");
        assertThat(pattern.positionsM()).containsExactly(-8.0, 0.0, 4.5);
        assertThat(pattern.amounts()).containsExactly(0.25, 6.0, 1.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "position\\n1|line 1|column amount is missing; needed are position, amount",
                "amount\\n1|line 1|column position is missing",
                "position,amount,position\\n1,2,3|line 1|column position occurs twice",
                "position,amount\\n1,2\\n2,x|line 3, column amount|\"x\" is not a number",
                "position,amount\\n1,2\\nx,2|line 3, column position|\"x\" is not a number",
                "position,amount\\n1,2\\n2|line 3, column amount|\"\" is not a number",
                "position,amount\\n1,2\\n,2|line 3, column position|\"\" is not a number",
                "position,amount\\n1,2\\n2,NaN|line 3, column amount|\"NaN\" is not a number",
                "position,amount\\n1,2\\n2,1e999|line 3, column amount|\"1e999\" is not a number",
                "position,amount\\n1e999,2|line 2, column position|\"1e999\" is not a number",
                "position,amount\\n1,-0.01|line 2, column amount|\"-0.01\" is below 0",
                "position,amount\\n1,2\\n\\n1.0,3|line 4, column position|two trays have this position",
                "position,amount\\n0,2\\n-0,3|line 3, column position|two trays have this position",
                "position;amount\\n1;2\\n2;1,250|line 3, column amount|\"1,250\" could mean a thousand",
                "position\\tamount\\n1\\t1.250|line 2, column amount|\"1.250\" could mean a thousand",
                "position,amount\\n1,5,2,3|line 2|the line has 4 cells, the header 2; with a decimal comma, separate",
                "position,amount\\n1,2,3|line 2|the line has 3 cells, the header 2",
                "position,amount\\n1,0\\n2,0\\n3,0|column amount|nothing was caught",
                "position,amount\\n\"1\"2,3||not a table"
            })
    void oneWrongLineRefusesTheTableWithItsPlace(String text, String place, String problem) {
        assertThatThrownBy(() -> read(text)).isInstanceOfSatisfying(InputFileException.class, refusal -> {
            assertThat(refusal.file()).isEqualTo("line.csv");
            assertThat(refusal.place()).isEqualTo(place == null ? "" : place);
            assertThat(refusal.problem()).startsWith(problem);
        });
    }

    @Test
    void anAmountOfZeroIsAllowed() throws Exception {
        assertThat(read("position,amount\n1,0\n2,0.01\n3,-0\n").amounts().get(1))
                .isEqualTo(0.01);
    }

    @Test
    void fromThreeToNinetyNineTrays() throws Exception {
        for (int count : List.of(3, 4, 98, 99)) {
            assertThat(read(trays(count)).size()).isEqualTo(count);
        }
        for (int count : List.of(0, 2, 100)) {
            assertThatThrownBy(() -> read(trays(count)))
                    .hasMessage("line.csv: " + count + " trays; allowed is 3 to 99, usual 9 or more");
        }
    }
}
