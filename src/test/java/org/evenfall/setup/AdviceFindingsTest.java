package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.DoubleStream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.AdviceReason.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class AdviceFindingsTest {

    private static Finding finding(Kind kind, String lever, double... numbers) {
        AdviceReason reason =
                new AdviceReason(kind, DoubleStream.of(numbers).boxed().toList(), lever);
        return AdviceFindings.of(new Advice(AdviceKind.KEEP, List.of(), null, List.of(reason)))
                .get(0);
    }

    private static Finding finding(Kind kind) {
        double[] numbers = Collections.nCopies(kind.count(), 12.4).stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        return finding(kind, "drop point", numbers);
    }

    @ParameterizedTest
    @CsvSource({
        "DO_A_TEST, NOTE, doATest",
        "WINDY, WARNING, windy",
        "POOLED, NOTE, pooled",
        "KEEP, NOTE, keep",
        "JUST_UNDER, NOTE, justUnder",
        "NOISE, WARNING, noise",
        "ONE_SIDE, WARNING, oneSide",
        "LEVEL_FIRST, NOTE, level",
        "PTO_FIRST, NOTE, pto",
        "OUTLETS_FIRST, NOTE, outlets",
        "NO_SHAPE, NOTE, noShape",
        "CENTRE_HEAVY, NOTE, centreHeavy",
        "OVERLAP_HEAVY, NOTE, overlapHeavy",
        "QUARTERS_LIGHT, NOTE, quartersLight",
        "QUARTERS_HEAVY, NOTE, quartersHeavy",
        "NO_LEVER, WARNING, noLever",
        "END_STOP, WARNING, endStop",
        "NO_BETTER, NOTE, noBetter",
        "DIRECTION, WARNING, direction",
        "BACK, NOTE, back",
        "ONE_LEVER, NOTE, oneLever",
        "TWO_LEVERS, NOTE, twoLevers",
        "NOT_YET, WARNING, notYet",
        "THEN_AGAIN, NOTE, thenAgain"
    })
    void severityAndKey(Kind kind, FindingKind severity, String key) {
        assertThat(finding(kind).kind()).isEqualTo(severity);
        assertThat(finding(kind).key()).isEqualTo("trays.advice." + key);
        assertThat(finding(kind).step()).isEqualTo(Step.TRAYS);
    }

    /** Every place {0}, {1} of a sentence has its argument, and no argument is left over. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everySentenceHasItsArguments(Kind kind) {
        Finding finding = finding(kind);
        String sentence =
                ResourceBundle.getBundle("org.evenfall.words", Locale.ROOT).getString(finding.key());
        for (int i = 0; i <= 3; i++) {
            assertThat(sentence.contains("{" + i + "}"))
                    .as("%s: {%s}", sentence, i)
                    .isEqualTo(i < finding.args().size());
        }
    }

    @Test
    void theArguments() {
        assertThat(finding(Kind.WINDY, "", 4.25).args()).containsExactly(Arg.number(4.25, 1, Unit.M_PER_S));
        assertThat(finding(Kind.POOLED, "", 3, 12.4).args())
                .containsExactly(Arg.count(3), Arg.number(12.4, 0, Unit.PERCENT));
        assertThat(finding(Kind.KEEP, "", 8.2, 93).args())
                .containsExactly(Arg.number(8.2, 0, Unit.PERCENT), Arg.number(93, 0, Unit.PERCENT));
        assertThat(finding(Kind.DIRECTION, "drop point").args()).containsExactly(Arg.text("drop point"));
    }

    @ParameterizedTest
    @CsvSource({"-7.5, word.left", "7.5, word.right"})
    void theSideThatGetsLessIsNamed(double leftRightPercent, String word) {
        assertThat(finding(Kind.ONE_SIDE, "", leftRightPercent).args())
                .containsExactly(Arg.word(word), Arg.number(7.5, 0, Unit.PERCENT));
    }
}
