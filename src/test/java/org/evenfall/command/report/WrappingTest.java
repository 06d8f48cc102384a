package org.evenfall.command.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where text is broken into lines. */
class WrappingTest {

    private static List<String> lines(String text, int width) {
        return Wrapping.lines(text, width, Locale.UK);
    }

    @Test
    void aLineHoldsExactlyItsWidth() {
        assertThat(lines("one two", 7)).containsExactly("one two");
        assertThat(lines("one two", 6)).containsExactly("one", "two");
        assertThat(lines("one two three", 7)).containsExactly("one two", "three");
        assertThat(lines("one two three", 8)).containsExactly("one two", "three");
        assertThat(lines("one", 3)).containsExactly("one");
        assertThat(lines("", 3)).containsExactly("");
    }

    @Test
    void whatIsLongerThanALineIsBrokenAnywhere() {
        assertThat(lines("abcdefgh", 3)).containsExactly("abc", "def", "gh");
        assertThat(lines("a bcdefgh", 3)).containsExactly("a", "bcd", "efg", "h");
    }

    @Test
    void aNumberKeepsItsUnitAndALineEndIsABlank() {
        assertThat(lines("about 12\u00a0kg", 9)).containsExactly("about", "12\u00a0kg");
        assertThat(lines("one\ttwo\r\nthree", 20)).containsExactly("one two three");
    }

    @Test
    void aDegreeKeepsItsLetter() {
        assertThat(Wrapping.lines("wind, above 15 °C, pH", 16, Locale.ENGLISH))
                .containsExactly("wind, above 15", "°C, pH");
        assertThat(Wrapping.lines("°C°C°C", 3, Locale.ENGLISH)).hasSize(2);
    }

    @Test
    void noLetterIsLostAndNoLineIsLonger() {
        Random random = new Random(7);
        for (int round = 0; round < 500; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < random.nextInt(120); i++) {
                text.append(random.nextInt(5) == 0 ? ' ' : "ab.-%“°".charAt(random.nextInt(7)));
            }
            int width = 1 + random.nextInt(30);
            List<String> lines = lines(text.toString(), width);
            assertThat(lines).allMatch(line -> line.length() <= width);
            assertThat(String.join("", lines).replace(" ", ""))
                    .isEqualTo(text.toString().replace(" ", ""));
        }
    }
}
