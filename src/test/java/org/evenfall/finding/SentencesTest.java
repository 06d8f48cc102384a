package org.evenfall.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.ListResourceBundle;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.Set;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.junit.jupiter.api.Test;

class SentencesTest {

    private static final ResourceBundle BUNDLE = new ListResourceBundle() {
        @Override
        protected Object[][] getContents() {
            return new Object[][] {
                {"throw.short", "Falls about {0} short at the {1}."},
                {"word.edge", "edge"},
                {"choice.FindingKind.STOP", "Stop"}
            };
        }
    };

    @Test
    void numbersComeInTheReadersHabitWithTheirUnit() {
        Finding finding = Finding.note(Step.MATCH, "throw.short", Arg.number(0.6123, 1, Unit.M), Arg.word("word.edge"));
        assertThat(new Sentences(BUNDLE, Locale.GERMANY).of(finding))
                .isEqualTo("Falls about 0,6\u00a0m short at the edge.");
        assertThat(new Sentences(BUNDLE, Locale.ENGLISH).of(finding))
                .isEqualTo("Falls about 0.6\u00a0m short at the edge.");
    }

    /** A true minus, and no blank before a degree sign, also where a quantity is shown as typed. */
    @Test
    void aMinusAndADegreeSignAreWrittenAsInPrint() {
        Sentences words = new Sentences(BUNDLE, Locale.ENGLISH);
        assertThat(words.number(-4.65, 1, Unit.M)).isEqualTo("\u22124.7\u00a0m");
        assertThat(words.number(2, 0, Unit.DEG)).isEqualTo("2°");
        assertThat(words.typed(new EnteredQuantity(" 2 ", Unit.DEG))).isEqualTo("2°");
        assertThat(words.typed(new EnteredQuantity("1,5", Unit.M))).isEqualTo("1,5\u00a0m");
    }

    @Test
    void aMissingSentenceShowsItsKeyAndNothingFails() {
        assertThat(new Sentences(BUNDLE, Locale.ENGLISH).text("no.such.key")).isEqualTo("no.such.key");
    }

    @Test
    void aChoiceHasItsWord() {
        assertThat(new Sentences(BUNDLE, Locale.ENGLISH).choice(FindingKind.STOP))
                .isEqualTo("Stop");
    }

    @Test
    void everySentenceOfTheBundleIsWellFormed() {
        ResourceBundle words = ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH);
        for (Enumeration<String> keys = words.getKeys(); keys.hasMoreElements(); ) {
            String key = keys.nextElement();
            String sentence = words.getString(key);
            assertThat(sentence).as(key).doesNotContain("'").doesNotContain("!");
            new MessageFormat(sentence, Locale.ENGLISH).format(new Object[] {"a", "b", "c", "d", "e", "f", "g", "h"});
        }
    }

    @Test
    void noKeyOccursTwiceInTheBundle() throws Exception {
        Set<Object> keys = new HashSet<>();
        Set<Object> twice = new HashSet<>();
        Properties counting = new Properties() {
            @Override
            public synchronized Object put(Object key, Object value) {
                if (!keys.add(key)) {
                    twice.add(key);
                }
                return super.put(key, value);
            }
        };
        try (var in = Sentences.class.getResourceAsStream("/org/evenfall/words.properties")) {
            counting.load(in);
        }
        assertThat(keys).isNotEmpty();
        assertThat(twice).isEmpty();
    }
}
