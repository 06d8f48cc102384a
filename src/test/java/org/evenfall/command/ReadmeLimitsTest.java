package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The limits that the README states: what is at the limit is taken, what is beyond is refused with its place. */
class ReadmeLimitsTest {

    private static final int MOST_BYTES = 4_000_000;

    @TempDir
    private Path folder;

    private Commands.Answer assess(String inside) throws Exception {
        Files.writeString(folder.resolve("limit.json"), "{\"evenfall\": 1, " + inside + "}");
        return new Commands(folder).run("assess", "limit.json", "--json");
    }

    private void taken(String inside) throws Exception {
        Commands.Answer answer = assess(inside);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isLessThan(CommandFace.WRONG);
    }

    private void refused(String inside, String place) throws Exception {
        Commands.Answer answer = assess(inside);
        assertThat(answer.code()).isEqualTo(CommandFace.WRONG);
        assertThat(answer.err()).hasLineCount(1).contains(place);
        assertThat(answer.out()).isEmpty();
    }

    private static String sized(int bytes) {
        String setup = "{\"evenfall\": 1}";
        return setup + " ".repeat(bytes - setup.length());
    }

    @Test
    void fourMegabytesAFile() throws Exception {
        Files.writeString(folder.resolve("at.json"), sized(MOST_BYTES));
        Files.writeString(folder.resolve("beyond.json"), sized(MOST_BYTES + 1));
        Commands commands = new Commands(folder);
        assertThat(commands.run("assess", "at.json").code()).isZero();
        Commands.Answer beyond = commands.run("assess", "beyond.json");
        assertThat(beyond.code()).isEqualTo(CommandFace.WRONG);
        assertThat(beyond.err()).contains("beyond.json: ", "4 MB");
    }

    @Test
    void fourMegabytesALineOfAStream() {
        byte[] lines = (sized(MOST_BYTES) + "\n" + sized(MOST_BYTES + 1) + "\n").getBytes(StandardCharsets.UTF_8);
        Commands.Answer answer = new Commands(folder).runWith(lines, "assess", "--stream");
        assertThat(answer.code()).isEqualTo(CommandFace.WRONG);
        assertThat(answer.out().lines().toList()).hasSize(2).satisfies(answers -> {
            assertThat(answers.get(0)).contains("\"findings\"");
            assertThat(answers.get(1)).contains("\"error\":", "\"line\":2", "4 MB");
        });
    }

    @Test
    void twentyThousandLettersAText() throws Exception {
        taken("\"start\": {\"farm\": \"" + "a".repeat(20_000) + "\"}");
        refused("\"start\": {\"farm\": \"" + "a".repeat(20_001) + "\"}", "/start/farm");
    }

    @Test
    void twoHundredLettersANumberWithItsUnit() throws Exception {
        taken("\"start\": {\"tramlineWidth\": \"28" + " ".repeat(197) + "m\"}");
        refused("\"start\": {\"tramlineWidth\": \"28" + " ".repeat(198) + "m\"}", "/start/tramlineWidth");
    }

    @Test
    void aThousandItemsAList() throws Exception {
        taken("\"other\": [" + String.join(",", Collections.nCopies(1000, "1")) + "]");
        refused("\"other\": [" + String.join(",", Collections.nCopies(1001, "1")) + "]", "/other");
    }

    /** The object of the whole file is the first level. */
    @Test
    void aNestingOfTwoHundred() throws Exception {
        taken("\"other\": " + "[".repeat(199) + "]".repeat(199));
        refused("\"other\": " + "[".repeat(200) + "]".repeat(200), "line 1");
    }

    @Test
    void anExponentOfFourHundred() throws Exception {
        taken("\"other\": 1e400");
        taken("\"other\": 1e-400");
        refused("\"other\": 1e401", "/other");
        refused("\"other\": 1e-401", "/other");
    }

    @ParameterizedTest
    @CsvSource({"-1000, 0", "1000, 0", "-1000.01, 2", "1000.01, 2"})
    void positionsToAThousand(String position, int code) throws Exception {
        Files.writeString(folder.resolve("line.csv"), "position,amount\n-3,5\n0,9\n3,5\n" + position + ",1\n");
        Commands.Answer answer = new Commands(folder)
                .run("trays", "overlap", "line.csv", "--width", "100", "--driving", "back-and-forth");
        assertThat(answer.code()).as(answer.err()).isEqualTo(code);
        if (code != 0) {
            assertThat(answer.err()).hasLineCount(1).contains("line.csv: line 5", "-1000 to 1000");
        }
    }
}
