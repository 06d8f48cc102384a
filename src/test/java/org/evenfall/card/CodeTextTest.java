package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The text of the QR code: what comes first, what fits, and what it says of the rest. */
class CodeTextTest {

    /** Most bytes of the code's text. */
    private static final int LIMIT = 445;

    private static final int LINES = 16;

    private static int bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8).length;
    }

    private static CodeText.Line line(String name, int length) {
        String start = name + ": ";
        return new CodeText.Line(name, start + "x".repeat(length - start.length()));
    }

    private static String text(CardLanguage language, List<CodeText.Line> lines) {
        return new CodeText(CardWords.in(language, CardSamples.OWN)).of(lines);
    }

    private static String joined(List<CodeText.Line> lines) {
        return lines.stream().map(CodeText.Line::text).collect(Collectors.joining("\n"));
    }

    /** Sixteen lines of 25 bytes with their ends make 416; the last line fills the rest. */
    private static List<CodeText.Line> ofBytes(int bytes) {
        List<CodeText.Line> lines = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            lines.add(line("setting " + i, 25));
        }
        lines.add(line("border", bytes - LINES * 26));
        assertThat(bytes(joined(lines))).isEqualTo(bytes);
        return lines;
    }

    @ParameterizedTest
    @ValueSource(ints = {LIMIT - 1, LIMIT})
    void whatFitsIsWhole(int bytes) {
        List<CodeText.Line> lines = ofBytes(bytes);
        assertThat(text(CardLanguage.EN, lines)).isEqualTo(joined(lines));
    }

    /** One byte above the limit: what is left out is named at the end, in the card's language. */
    @ParameterizedTest
    @CsvSource({"EN, Not in this code: border", "DE, Nicht in diesem Code: border", "FR, Pas dans ce code : border"})
    void aByteAboveTheLimitSaysWhatIsLeftOut(CardLanguage language, String end) {
        List<CodeText.Line> lines = ofBytes(LIMIT + 1);
        String text = text(language, lines);
        assertThat(text).isEqualTo(joined(lines.subList(0, LINES)) + "\n" + end);
        assertThat(bytes(text)).isLessThanOrEqualTo(LIMIT);
    }

    /** Of several, the first and the last are named, in the order of the card. */
    @ParameterizedTest
    @CsvSource({
        "EN, Not in this code: all from setting 15 to chain",
        "DE, Nicht in diesem Code: alles von setting 15 bis chain",
        "FR, Pas dans ce code : tout de setting 15 à chain"
    })
    void theFirstAndTheLastOfSeveralAreNamed(CardLanguage language, String end) {
        List<CodeText.Line> lines = new ArrayList<>(ofBytes(LIMIT + 1));
        lines.add(line("chain", 40));
        String text = text(language, lines);
        assertThat(text).isEqualTo(joined(lines.subList(0, LINES - 1)) + "\n" + end);
        assertThat(bytes(text)).isLessThanOrEqualTo(LIMIT);
    }

    /** Names that do not fit either are counted. */
    @Test
    void namesThatDoNotFitAreCounted() {
        List<CodeText.Line> lines = new ArrayList<>(ofBytes(LIMIT));
        lines.add(line("n".repeat(500), 510));
        assertThat(text(CardLanguage.EN, lines))
                .isEqualTo(joined(lines.subList(0, LINES - 1)) + "\nNot in this code: the last 3 lines. See the card.");
    }

    /** Date and revision, the product, then every setting in the order of the card. */
    @ParameterizedTest
    @EnumSource(
            value = CardLanguage.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"UNANSWERED"})
    void theDateComesFirstThenTheSettingsInOrder(CardLanguage language) throws Exception {
        Setup demo = CardSamples.demo();
        CardContent content = CardSamples.of(demo.withCard(demo.card().withLanguage(language)), CardSamples.CODE);
        List<String> lines = content.code().text().lines().toList();
        String dated = switch (language) {
            case DE -> "18. März 2027, Fassung 1";
            case FR -> "18 mars 2027, version 1";
            default -> "18 March 2027, revision 1";
        };
        assertThat(lines).startsWith(dated, "Granular urea, treated");
        List<String> settings = content.figures().stream()
                .map(figure -> (figure.label() + ": " + figure.value()).replace('\u00a0', ' '))
                .toList();
        assertThat(lines.subList(2, lines.size()))
                .containsSubsequence(settings)
                .hasSize(settings.size() + 1)
                .anyMatch(line -> line.endsWith(" 0°"));
    }

    /** An uneven field is in the second line; its reason, which may be long, at the end or named there. */
    @Test
    void anUnevenFieldComesBeforeTheSettings() throws Exception {
        Setup demo = CardSamples.demo();
        var tests = demo.trays().tests();
        var catches = Stream.of("12.9 g", "15.4 g", "18.9 g", "22.6 g", "19.6 g", "15.1 g", "13.4 g")
                .map(EnteredQuantity::parse)
                .toList();
        Setup uneven = demo.withTrays(demo.trays()
                        .withTests(List.of(tests.get(0), tests.get(1).withCatches(catches))))
                .withCard(demo.card().withUnevenReason("only this strip " + "and no other ".repeat(20)));
        CardContent content = CardSamples.of(uneven, "");
        assertThat(content.heading().unevenness()).hasSize(2);
        List<String> lines = content.code().text().lines().toList();
        assertThat(lines.get(1)).startsWith("NOT EVEN ENOUGH: CV ");
        assertThat(lines.get(2)).isEqualTo("Granular urea, treated");
        assertThat(lines.get(lines.size() - 1)).isEqualTo("Not in this code: reason");
    }
}
