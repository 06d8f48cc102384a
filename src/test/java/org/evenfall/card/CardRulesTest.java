package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.evenfall.card.DrawnCards.Letters;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.DayLines;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.trays.WindLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stays true of every card, whatever its words: what is large, how numbers and dates look, what a paper never has. */
class CardRulesTest {

    private static Setup in(CardLanguage language, Setup setup) {
        return setup.withCard(setup.card().withLanguage(language));
    }

    private static List<String> labels(CardContent content) {
        return content.figures().stream().map(CardContent.Figure::label).toList();
    }

    private static String demoText(String from, String to) throws Exception {
        String demo = Files.readString(Path.of("demo", "setup.json"));
        assertThat(demo).contains(from);
        return demo.replace(from, to);
    }

    /** Rate, nitrogen, tramline width, then what sets the rate and the pattern; the order in which the driver sets them. */
    @Test
    void theLargeFiguresAreInTheDriversOrder() throws Exception {
        Setup demo = CardSamples.demo();
        CardContent content =
                CardSamples.of(demo.withMachineCheck(demo.machineCheck().withGear("4")), "");
        assertThat(labels(content))
                .containsExactly(
                        "Product",
                        "Nitrogen",
                        "Tramlines",
                        "Opening left",
                        "Opening right",
                        "long vane",
                        "drop point",
                        "PTO speed",
                        "Engine",
                        "Speed",
                        "Over the crop",
                        "Chain",
                        "Bucket in 20\u00a0s",
                        "Stop at wind",
                        "On: into field",
                        "Off: into field",
                        "Border");
        assertThat(content.figures()).contains(new CardContent.Figure("Tramlines", "28\u00a0m"));
    }

    /** The width as large as the rate; half a metre is kept. */
    @ParameterizedTest
    @CsvSource({"28 m, 28 m", "27.5 m, 27.5 m", "118 ft, 36 m"})
    void theTramlineWidthIsLarge(String typed, String printed) throws Exception {
        Setup demo = CardSamples.demo();
        Setup setup = demo.withStart(demo.start().withTramlineWidth(EnteredQuantity.parse(typed)));
        CardContent content = CardSamples.of(setup, "");
        if (!content.sheet().findingOnly()) {
            Letters letters = Letters.of(CardPdf.draw(content, CardSamples.WHEN));
            assertThat(letters.large()).contains(printed.replace(" ", ""));
        }
        assertThat(CardSamples.of(CardSamples.demo(), "").sheet().findingOnly()).isFalse();
    }

    /** A tilt of 0 is in the small lines only, another one is large and not rounded to a degree. */
    @ParameterizedTest
    @CsvSource({"0 °, false, 0°", "1.5 °, true, 1.5°", "-2 °, true, −2°"})
    void onlyATiltIsLarge(String typed, boolean large, String printed) throws Exception {
        Setup setup = new SetupJson().read(demoText("\"tilt\": \"0 °\"", "\"tilt\": \"" + typed + "\""), "demo");
        CardContent content = CardSamples.of(setup, "");
        assertThat(content.figures().contains(new CardContent.Figure("Tilt", printed)))
                .isEqualTo(large);
        assertThat(String.join("|", content.heading().lines()).contains("tilt " + printed))
                .isEqualTo(!large);
        assertThat(content.code().text()).contains("Tilt: " + printed);
    }

    /** Both sides of an opening are in one row. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void theOpeningsAreInOneRow(Paper paper) throws Exception {
        String text =
                Letters.of(CardPdf.draw(CardSamples.of(paper, CardLanguage.EN, ""), CardSamples.WHEN)).boxes().stream()
                        .map(box -> box.letter() + "@" + Math.round(box.bottom()) + " ")
                        .reduce("", String::concat);
        assertThat(Pattern.compile("O@(\\d+) p@\\1 e@\\1 n@\\1 i@\\1 n@\\1 g@\\1 l@\\1")
                        .matcher(text)
                        .results())
                .hasSize(1);
        String left = Pattern.compile("O@(\\d+) p@\\1 e@\\1 n@\\1 i@\\1 n@\\1 g@\\1 l@\\1")
                .matcher(text)
                .results()
                .findFirst()
                .orElseThrow()
                .group(1);
        assertThat(text).contains("g@" + left + " r@" + left);
    }

    /** How the rate is set, in words; a factor is never called an opening. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "EN; UNANSWERED; rate: opening by hand; none",
                "EN; OPENING; rate: opening by hand; none",
                "EN; FACTOR; rate: terminal with a factor; opening",
                "EN; WEIGHING; rate: terminal that weighs; opening",
                "DE; OPENING; Menge: Öffnung von Hand; none",
                "DE; FACTOR; Menge: Terminal mit Faktor; öffnung",
                "DE; WEIGHING; Menge: Terminal mit Waage; öffnung",
                "FR; OPENING; dose : ouverture à la main; none",
                "FR; FACTOR; dose : terminal avec facteur; ouverture",
                "FR; WEIGHING; dose : terminal à pesée; ouverture"
            })
    void howTheRateIsSetIsPrinted(CardLanguage language, RateSetting setting, String words, String never)
            throws Exception {
        Setup demo = CardSamples.demo();
        Setup setup = in(
                language,
                demo.withMachine(demo.machine()
                        .withRateSetting(setting)
                        .withFactorRule(setting.byFactor() ? FactorRule.SHOWN_OVER_CAUGHT : FactorRule.UNANSWERED)));
        CardContent content = CardSamples.of(setup, "");
        assertThat(String.join("|", content.heading().lines()).replace('\u00a0', ' '))
                .contains(words);
        String front = content.heading().lines() + " " + labels(content)
                + content.code().text();
        assertThat(front.toLowerCase(java.util.Locale.ROOT)).doesNotContain(never);
    }

    /** Dates in one form: of the card, of the inhibitor, of a warning; no other form anywhere on the paper. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "EN; 18 March 2027; 30 January 2027",
                "DE; 18. März 2027; 30. Januar 2027",
                "FR; 18 mars 2027; 30 janvier 2027"
            })
    void everyDateHasOneForm(CardLanguage language, String dated, String useBy) throws Exception {
        Setup demo = CardSamples.demo();
        Setup passed = in(language, demo.withProduct(demo.product().withUseBy("2027-01-30")));
        CardContent content = CardSamples.of(passed, CardSamples.CODE);
        String all = content.toString().replace('\u00a0', ' ');
        assertThat(content.signature())
                .anyMatch(line -> line.replace('\u00a0', ' ').startsWith(dated));
        assertThat(content.warnings())
                .anyMatch(line -> line.replace('\u00a0', ' ').contains(useBy)
                        && line.replace('\u00a0', ' ').contains(dated));
        assertThat(content.heading().lines())
                .anyMatch(line -> line.replace('\u00a0', ' ').contains(useBy));
        assertThat(all).doesNotContainPattern("\\d{4}-\\d\\d|\\d+/\\d+/\\d{4}|\\d+\\.\\d+\\.\\d{4}");
    }

    /** A date that is none is printed as it was typed. */
    @Test
    void whatIsNoDateIsPrintedAsTyped() throws Exception {
        Setup demo = CardSamples.demo();
        CardContent content = CardSamples.of(demo.withCard(demo.card().withDate("soon")), "");
        assertThat(content.signature()).contains("soon, revision 1");
    }

    /** No words of computing or of keys, in no language. */
    @ParameterizedTest
    @ValueSource(strings = {"EN", "DE", "FR"})
    void thePaperHasNoWordsOfComputing(CardLanguage language) throws Exception {
        byte[] pdf = CardPdf.draw(CardSamples.of(Paper.A5_LANDSCAPE, language, CardSamples.CODE), CardSamples.WHEN);
        StructureTree tree = StructureTree.of(pdf);
        assertThat(tree.text())
                .doesNotContainPattern(
                        "(?i)\\b(UTC|bytes?|octets?|(key|clé|Schlüssel)[\\s\u00a0]+[0-9A-F]{4}|SHA|RSA|certificat\\w*|Zertifikat\\w*|JSON|PDF|Hash)\\b");
        assertThat(tree.text().replaceAll("[\\s\u00a0]+", "")).contains(CardSamples.CODE.replace(" ", ""));
    }

    /** What was typed has the decimal sign of the card's language, and a true minus; a scale keeps its decimals. */
    @Test
    void numbersThatWereTypedFollowTheLanguage() throws Exception {
        Setup demo = new SetupJson().read(demoText("\"long vane\": \"10.5\"", "\"long vane\": \"10.25\""), "demo");
        Setup setup = demo.withTrays(demo.trays()
                        .withSwitchOn(EnteredQuantity.parse("12.5 m"))
                        .withSwitchOff(EnteredQuantity.parse("-7,5 m")))
                .withCard(demo.card().withWindStop(EnteredQuantity.parse("4.5 m/s")));
        for (CardLanguage language : List.of(CardLanguage.DE, CardLanguage.FR)) {
            List<String> values = CardSamples.of(in(language, setup), "").figures().stream()
                    .map(CardContent.Figure::value)
                    .toList();
            assertThat(values).contains("12,5\u00a0m", "7,5\u00a0m", "4,5\u00a0m/s", "10,25", "27,5");
            assertThat(values).noneMatch(value -> value.matches(".*\\d\\.\\d.*"));
        }
        assertThat(CardSamples.of(setup, "").figures().stream().map(CardContent.Figure::value))
                .contains("12.5\u00a0m", "7.5\u00a0m", "4.5\u00a0m/s", "10.25");
        assertThat(CardWords.in(CardLanguage.DE, CardSamples.OWN).number(-2.5, 1, org.evenfall.quantity.Unit.M))
                .isEqualTo("−2,5\u00a0m");
    }

    /** The day to spread, water, slopes, spills and livestock, in every language; the wind limit is the constant. */
    @ParameterizedTest
    @CsvSource({
        "EN, Rain|Temperature|Wind|Soil|Lime|Humidity, local, livestock",
        "DE, Regen|Temperatur|Wind|Boden|Kalk|Feuchte, örtlich, Vieh",
        "FR, Pluie|Température|Vent|Sol|Chaux|Humidité, locales, bétail"
    })
    void theBackSaysWhatMakesADayGood(CardLanguage language, String starts, String local, String livestock)
            throws Exception {
        CardContent content = CardSamples.of(in(language, CardSamples.demo()), "");
        List<String> lines = content.day().lines();
        String[] start = starts.split("\\|");
        assertThat(lines).hasSize(start.length);
        for (int i = 0; i < start.length; i++) {
            assertThat(lines.get(i)).startsWith(start[i]);
        }
        assertThat(content.cautions().lines())
                .anyMatch(line -> line.contains(local))
                .anyMatch(line -> line.contains(livestock));
        String limit = Math.round(WindLimits.USUAL.stopMPerS()) + "\u00a0m/s";
        assertThat(lines.get(2)).contains(limit);
        String typed = Files.readString(Path.of("src/main/resources/org/evenfall/words.properties"));
        assertThat(typed.lines().filter(line -> line.startsWith("day.wind="))).allMatch(line -> line.contains("{0}"));
    }

    /** One wording: each line of the card is the window's, in the program's language. */
    @Test
    void theDayHasOneWording() throws Exception {
        CardContent content = CardSamples.of(CardSamples.demo(), "");
        List<String> window = new ArrayList<>();
        Stream.of(DayLines.WEATHER, DayLines.CARE)
                .flatMap(List::stream)
                .forEach(line -> window.add(CardSamples.OWN.text(line.key(), line.args())));
        List<String> card = new ArrayList<>(content.day().lines());
        card.addAll(content.cautions().lines().subList(7, 9));
        assertThat(card).isEqualTo(window);
        assertThat(content.day().title()).isEqualTo(CardSamples.OWN.text(DayLines.TITLE));
    }

    /** Nobody is named where nobody is typed. */
    @Test
    void anUnsignedCardNamesNobody() throws Exception {
        Setup demo = CardSamples.demo();
        CardContent content =
                CardSamples.of(demo.withCard(demo.card().withSignedBy("").withMeasuredBy(" ")), "");
        assertThat(content.signature()).containsExactly("18\u00a0March\u00a02027, revision 1");
    }
}
