package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.rate.FieldUse;
import org.evenfall.rate.PassUse;
import org.evenfall.rate.SeasonUse;
import org.evenfall.setup.SeasonLogResult;
import org.evenfall.setup.SeasonLogResult.Field;
import org.evenfall.setup.SeasonLogResult.Plan;
import org.junit.jupiter.api.Test;

/** What was spread, in words. */
class LogLinesTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
    private static final PassUse PASS = PassUse.of(12.5, 2000, 46.0, 160.0);
    private static final FieldUse FIELD = FieldUse.of(List.of(PASS));

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private static String field(Plan plan) {
        return plain(LogLines.field(WORDS, new Field("Far Bank", FIELD, plan), "Far Bank"));
    }

    @Test
    void withoutAPassThereIsNoSentence() {
        SeasonLogResult none = new SeasonLogResult(List.of(), List.of(), SeasonUse.of(List.of()), 0);
        assertThat(LogLines.sum(WORDS, none)).isEmpty();
        assertThat(LogLines.of(WORDS, none)).isEmpty();
    }

    @Test
    void theSumNamesProductNitrogenAreaAndWhatIsNotComplete() {
        SeasonLogResult log = new SeasonLogResult(
                List.of(), List.of(new Field("Far Bank", FIELD, null)), SeasonUse.of(List.of(PASS)), 2);
        assertThat(plain(LogLines.sum(WORDS, log)))
                .isEqualTo("So far 2000 kg of product with 920 kg of nitrogen on 12.5 ha."
                        + " Passes without area or product, not counted: 2.");
        SeasonUse unknown = SeasonUse.of(List.of(PassUse.of(12.5, 2000, null, null)));
        assertThat(plain(LogLines.sum(WORDS, new SeasonLogResult(List.of(), List.of(), unknown, 0))))
                .isEqualTo("So far 2000 kg of product on 12.5 ha.");
        assertThat(LogLines.of(WORDS, log)).hasSize(2);
    }

    @Test
    void aFieldIsHeldAgainstThePlan() {
        assertThat(field(null)).isEqualTo("Far Bank: 74 kg/ha of nitrogen.");
        assertThat(field(new Plan(3, 150, 76.4)))
                .isEqualTo("Far Bank, pass 1 of 3: 74 kg/ha of nitrogen, 76 kg/ha left of the season’s plan.");
        assertThat(field(new Plan(3, 60, -13.6)))
                .isEqualTo("Far Bank, pass 1 of 3: 74 kg/ha of nitrogen, 14 kg/ha more than the season’s plan.");
    }

    @Test
    void aFieldWithoutNameOrNitrogenIsNamedSo() {
        FieldUse unknown = FieldUse.of(List.of(PassUse.of(12.5, 2000, null, null)));
        assertThat(plain(LogLines.field(WORDS, new Field("", unknown, null), "")))
                .isEqualTo("no field named: 2000 kg of product. Type the nitrogen content to see the nitrogen.");
    }
}
