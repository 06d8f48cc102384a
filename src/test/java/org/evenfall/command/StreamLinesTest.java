package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.store.InputText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines of any length and with any line end, however the input comes in pieces. */
class StreamLinesTest {

    /** Gives at most so many bytes at once. */
    private static InputStream inPieces(byte[] bytes, int most) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public int read(byte[] into, int from, int length) {
                return super.read(into, from, Math.min(most, length));
            }
        };
    }

    private static List<String> lines(String text, int most) throws IOException {
        StreamLines lines = new StreamLines(inPieces(text.getBytes(StandardCharsets.UTF_8), most));
        List<String> all = new ArrayList<>();
        for (byte[] line = lines.next(); line != null; line = lines.next()) {
            all.add(new String(line, StandardCharsets.UTF_8));
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 1000})
    void everyLineEndEndsOneLine(int most) throws IOException {
        assertThat(lines("a\r\nbé\n\n\rc\r\r\nd", most)).containsExactly("a", "bé", "", "", "c", "", "d");
        assertThat(lines("a\n", most)).containsExactly("a");
        assertThat(lines("a\r\n", most)).containsExactly("a");
        assertThat(lines("\r\n", most)).containsExactly("");
        assertThat(lines("", most)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-1, -1", "0, 0", "1, 1", "2, 1", "70000, 1"})
    void ofALongLineOneByteMoreThanTheLimitIsKept(int beyond, int kept) throws IOException {
        String text = "x".repeat(InputText.MOST_BYTES + beyond) + "\nnext\n";
        List<String> lines = lines(text, 1 << 16);
        assertThat(lines.get(0)).hasSize(InputText.MOST_BYTES + kept);
        assertThat(lines.subList(1, lines.size())).containsExactly("next");
    }
}
