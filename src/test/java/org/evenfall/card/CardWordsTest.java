package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.DayLines;
import org.evenfall.setup.entry.CardLanguage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The languages of the card: whatever may be printed on it has a sentence in each. */
class CardWordsTest {

    private static final ResourceBundle ENGLISH = ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH);
    private static final Path MAIN = Path.of("src", "main", "java", "org", "evenfall");
    private static final String UNIT = "unit.";

    private static PropertyResourceBundle bundle(String language) throws Exception {
        return new PropertyResourceBundle(Files.newBufferedReader(
                Path.of("src", "main", "resources", "org", "evenfall", "card_" + language + ".properties")));
    }

    /** Keys that the card itself uses, and every sentence that can be a warning or a stop. */
    private static Set<String> printable() throws Exception {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.list(MAIN.resolve("card"))) {
            for (Path file : files.toList()) {
                Matcher own = Pattern.compile("\"(card\\.[A-Za-z.]+)\"").matcher(Files.readString(file));
                while (own.find()) {
                    keys.add(own.group(1));
                }
            }
        }
        try (Stream<Path> files = Files.walk(MAIN)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher finding = Pattern.compile("Finding\\s*\\.?\\s*(?:warn|stop)\\(|new Finding\\(")
                        .matcher(Files.readString(file));
                while (finding.find()) {
                    Matcher key = Pattern.compile("\"([a-z][A-Za-z]*\\.[A-Za-z.]+)\"")
                            .matcher(call(Files.readString(file), finding.end()));
                    while (key.find()) {
                        keys.add(key.group(1));
                    }
                }
            }
        }
        for (String key : new HashSet<>(keys)) {
            if (key.endsWith(".")) {
                keys.remove(key);
                ENGLISH.keySet().stream().filter(known -> known.startsWith(key)).forEach(keys::add);
            }
        }
        for (String prefix : new String[] {
            "field.",
            "direction.",
            "choice.CheckItem.",
            "choice.ProductForm.",
            "choice.Side.",
            "choice.EvennessVerdict.",
            "choice.UnitsBasis."
        }) {
            ENGLISH.keySet().stream().filter(known -> known.startsWith(prefix)).forEach(keys::add);
        }
        keys.removeIf(key -> key.startsWith("source."));
        // what was spread after the card is printed on none
        keys.removeIf(key -> key.startsWith("log."));
        keys.add(DayLines.TITLE);
        Stream.of(DayLines.WEATHER, DayLines.CARE)
                .flatMap(List::stream)
                .map(DayLines.Line::key)
                .forEach(keys::add);
        return keys;
    }

    /** The text of a call's arguments, to the closing bracket. */
    private static String call(String source, int from) {
        int depth = 1;
        int at = from;
        while (depth > 0 && at < source.length()) {
            depth += source.charAt(at) == '(' ? 1 : source.charAt(at) == ')' ? -1 : 0;
            at++;
        }
        return source.substring(from, at);
    }

    @ParameterizedTest
    @EnumSource(
            value = CardLanguage.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"UNANSWERED", "EN"})
    void whateverMayBePrintedHasASentence(CardLanguage language) throws Exception {
        Set<String> printable = printable();
        assertThat(printable).hasSizeGreaterThan(180);
        assertThat(ENGLISH.keySet()).containsAll(printable);
        assertThat(bundle(language.tag()).keySet()).containsAll(printable);
    }

    /** No sentence without an English one, and each has the same gaps. */
    @ParameterizedTest
    @EnumSource(
            value = CardLanguage.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"UNANSWERED", "EN"})
    void theSentencesHaveTheSameGaps(CardLanguage language) throws Exception {
        PropertyResourceBundle bundle = bundle(language.tag());
        for (String key : bundle.keySet()) {
            if (key.startsWith(UNIT)) {
                continue;
            }
            assertThat(ENGLISH.containsKey(key)).as(key).isTrue();
            assertThat(gaps(bundle.getString(key))).as(key).isEqualTo(gaps(ENGLISH.getString(key)));
            assertThat(bundle.getString(key)).as(key).doesNotContain("'").doesNotContain("!");
            new MessageFormat(bundle.getString(key), Locale.ROOT).format(new Object[] {"a", "b", "c", "d"});
        }
    }

    /** A unit whose symbol is an English word or its abbreviation has a text in each other language, and only such a unit. */
    @ParameterizedTest
    @EnumSource(
            value = CardLanguage.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"UNANSWERED", "EN"})
    void theUnitsThatAreEnglishAreTranslated(CardLanguage language) throws Exception {
        PropertyResourceBundle bundle = bundle(language.tag());
        assertThat(bundle.keySet().stream().filter(key -> key.startsWith(UNIT)))
                .containsExactlyInAnyOrder("unit.RPM", "unit.PER_T", "unit.UNITS", "unit.FT", "unit.IN")
                .allMatch(key -> !bundle.getString(key)
                        .equals(Unit.valueOf(key.substring(UNIT.length())).symbol()));
    }

    @Test
    void unitsFollowTheDriversLanguage() {
        Sentences own = new Sentences(ENGLISH, Locale.UK);
        assertThat(CardWords.in(CardLanguage.DE, own).number(540, 0, Unit.RPM)).isEqualTo("540\u00a0U/min");
        assertThat(CardWords.in(CardLanguage.FR, own).number(540, 0, Unit.RPM)).isEqualTo("540\u00a0tr/min");
        assertThat(CardWords.in(CardLanguage.EN, own).number(540, 0, Unit.RPM)).isEqualTo("540\u00a0rpm");
        EnteredQuantity price = new EnteredQuantity("673", Unit.PER_T);
        assertThat(CardWords.in(CardLanguage.DE, own).typed(price)).isEqualTo("673\u00a0je t");
        assertThat(CardWords.in(CardLanguage.FR, own).typed(price)).isEqualTo("673\u00a0par t");
        assertThat(own.typed(price)).isEqualTo("673\u00a0per t");
        assertThat(CardWords.in(CardLanguage.DE, own).number(12, 0, Unit.KM_PER_H))
                .isEqualTo("12\u00a0km/h");
    }

    private static Set<String> gaps(String sentence) {
        Set<String> gaps = new TreeSet<>();
        Matcher gap = Pattern.compile("\\{\\d}").matcher(sentence);
        while (gap.find()) {
            gaps.add(gap.group());
        }
        return gaps;
    }

    @Test
    void numbersFollowTheDriversLanguage() {
        Sentences own = new Sentences(ENGLISH, Locale.UK);
        Arg figure = Arg.number(2.88, 2, Unit.HA);
        Arg bag = Arg.text("500 kg");
        assertThat(CardWords.in(CardLanguage.DE, own).text("card.bag", bag, figure))
                .isEqualTo("Ein Sack von 500 kg reicht für 2,88\u00a0ha");
        assertThat(CardWords.in(CardLanguage.FR, own).text("card.bag", bag, figure))
                .isEqualTo("Un sac de 500 kg fait 2,88\u00a0ha");
        assertThat(CardWords.in(CardLanguage.EN, own).text("card.bag", bag, figure))
                .isEqualTo("One bag of 500 kg does 2.88\u00a0ha");
        assertThat(CardWords.in(CardLanguage.UNANSWERED, own)).isSameAs(own);
    }
}
