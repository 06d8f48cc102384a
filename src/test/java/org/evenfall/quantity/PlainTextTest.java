package org.evenfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void ordinaryTextIsKept() {
        assertThat(PlainText.oneLine("Zoë’s 28\u00a0m – ½ \uD83C\uDF3E", 40))
                .isEqualTo("Zoë’s 28\u00a0m – ½ \uD83C\uDF3E");
        assertThat(PlainText.oneLine("", 40)).isEmpty();
    }

    @Test
    void lineBreaksBecomeBlanks() {
        assertThat(PlainText.oneLine("a\r\nb\nc\rd\te\u2028f\u2029g\u0085h", 40))
                .isEqualTo("a b c d e f g h");
    }

    @Test
    void controlsAndDirectionMarksAreShownAsAMark() {
        assertThat(PlainText.oneLine("\u001B[31mred\u0000\u007F\u009B", 40))
                .isEqualTo("\uFFFD[31mred\uFFFD\uFFFD\uFFFD");
        assertThat(PlainText.oneLine("a\u202Eb\u2066c\u200Fd\u061Ce", 40)).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe");
        assertThat(PlainText.oneLine("half \uD83C", 40)).isEqualTo("half \uFFFD");
    }

    @Test
    void aLongTextIsCutBetweenCharacters() {
        assertThat(PlainText.oneLine("abcde", 5)).isEqualTo("abcde");
        assertThat(PlainText.oneLine("abcdef", 5)).isEqualTo("abcd…");
        assertThat(PlainText.oneLine("abc\uD83C\uDF3Edef", 5)).isEqualTo("abc…");
        assertThat(PlainText.oneLine("abc", 1)).isEqualTo("…");
        assertThat(PlainText.oneLine("abc", 0)).isEmpty();
        assertThat(PlainText.oneLine("x".repeat(1_000_000), 80)).hasSize(80);
    }
}
