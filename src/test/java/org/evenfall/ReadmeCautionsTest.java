package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cautions of the README are those of the program: on the page before a step, and on the card. */
class ReadmeCautionsTest {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH);
    private static final String FIRST = "The machine’s handbook, local codes and licensed practice come first.";

    private static String readme() throws Exception {
        return Readme.between("## Cautions", "The wizard shows the cautions").toLowerCase(Locale.ROOT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "engine off, key out, everything stopped before hands go in | step.machine.caution",
                "engine off, key out, everything stopped before hands go in | step.rate.caution",
                "at least 50 m off | step.trays.caution",
                "nobody under a hanging bag | step.product.caution",
                "nobody under a hanging bag | step.rate.caution",
                "never mix urea with ammonium nitrate products | step.product.caution",
                "empty, clean and dry | product.notClean",
                "water | step.trays.caution",
                "while the discs turn | step.trays.caution"
            })
    void theCautionsOfTheReadmeAreOnTheScreen(String words, String key) throws Exception {
        assertThat(readme()).contains(words);
        assertThat(WORDS.getString(key).toLowerCase(Locale.ROOT)).contains(words);
    }

    /** In the words of the card, which are shorter. CardPagesTest finds each of them on the pages. */
    @Test
    void theCardRepeatsTheMainOnes() throws Exception {
        Map<String, String> main = Map.of(
                "engine off, key out", "card.caution.2",
                "behind or beside", "card.caution.3",
                "a hanging bag", "card.caution.4",
                "never mix urea", "card.caution.5",
                "keep clear of water", "card.caution.7");
        String readme = readme();
        main.forEach((words, key) -> {
            assertThat(readme).contains(words);
            assertThat(WORDS.getString(key).toLowerCase(Locale.ROOT)).contains(words);
        });
    }

    @Test
    void theHandbookComesFirstOnEveryPageOfCautionsAndOnTheCard() {
        for (String step : List.of("product", "machine", "height", "rate", "trays")) {
            assertThat(WORDS.getString("step." + step + ".caution")).endsWith(FIRST);
        }
        assertThat(WORDS.getString("card.caution.1")).isEqualTo(FIRST);
    }
}
