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
        return AdviceFindings.of(new Advice(AdviceKind.KEEP, List.of(reason))).get(0);
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
        "MEND_FIRST, NOTE, mendFirst",
        "LOOK_FIRST, NOTE, lookFirst",
        "MEND_ALL_THE_SAME, NOTE, mendAllTheSame",
        "SPOILT_TRAY, WARNING, spoiltTray",
        "TWIN_TRAY, NOTE, twinTray",
        "TYPE_OR_BLANK, NOTE, typeOrBlank",
        "TYPE_OR_REPEAT, NOTE, typeOrRepeat",
        "VANES_AGAIN, NOTE, vanesAgain",
        "STILL_ONE_SIDE, NOTE, stillOneSide",
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
        "BETTER_EXPECTED, NOTE, betterExpected",
        "PAST_NEIGHBOUR, NOTE, pastNeighbour",
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

    /** Each known fault at the step and entry where it is mended, with its source. */
    @ParameterizedTest
    @CsvSource({
        "PART_FAILED, WARNING, fault.part, MACHINE, /yard/checks",
        "VANE_WORN, WARNING, fault.vaneWorn, MACHINE, /yard/vanes",
        "VANE_FAILED, WARNING, fault.vane, MACHINE, /yard/vanes",
        "LEVEL_OFF, WARNING, fault.level, MACHINE, /yard/heightLeft",
        "TYRES_OFF, WARNING, fault.tyres, MACHINE, /yard/tyreLeft",
        "PTO_OFF, WARNING, fault.pto, MACHINE, /yard/ptoMeasured",
        "PTO_BEYOND, WARNING, fault.ptoBeyond, MACHINE, /yard/ptoMeasured",
        "OUTLETS_UNEQUAL, WARNING, fault.outlets, RATE, /rate/bucketTests",
        "PRODUCT_DAMP, WARNING, fault.damp, PRODUCT, /product/condition",
        "PRODUCT_CAKED, WARNING, fault.caked, PRODUCT, /product/condition",
        "GUARDS_UNSEEN, NOTE, unseen.guards, MACHINE, /yard/checks",
        "VANES_UNSEEN, NOTE, unseen.vanes, MACHINE, /yard/vanes",
        "PTO_UNSEEN, NOTE, unseen.pto, MACHINE, /yard/ptoMeasured",
        "OUTLETS_UNSEEN, NOTE, unseen.outlets, RATE, /rate/bucketTests"
    })
    void whereAKnownFaultIsMended(Kind kind, FindingKind severity, String key, Step step, String pointer) {
        Finding finding = finding(kind);
        assertThat(finding.kind()).isEqualTo(severity);
        assertThat(finding.key()).isEqualTo("trays." + key);
        assertThat(finding.step()).isEqualTo(step);
        assertThat(finding.field()).isEqualTo(pointer);
        assertThat(finding.source()).isNotEmpty();
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
        assertThat(finding(Kind.ONE_SIDE, "", leftRightPercent, 14).args())
                .containsExactly(Arg.word(word), Arg.number(7.5, 0, Unit.PERCENT), Arg.number(14, 1, Unit.M));
        assertThat(finding(Kind.STILL_ONE_SIDE, "", leftRightPercent).args())
                .containsExactly(Arg.word(word), Arg.number(7.5, 0, Unit.PERCENT));
        assertThat(finding(Kind.VANES_AGAIN, "", leftRightPercent).args()).containsExactly(Arg.word(word));
        assertThat(finding(Kind.OUTLETS_UNEQUAL, "", leftRightPercent).args())
                .containsExactly(Arg.word(word), Arg.number(7.5, 0, Unit.PERCENT), Arg.number(5, 0, Unit.PERCENT));
    }

    @ParameterizedTest
    @CsvSource({"-1, choice.Side.LEFT", "1, choice.Side.RIGHT", "0, choice.Side.UNANSWERED"})
    void theDiscOfAVaneIsNamed(double side, String word) {
        assertThat(finding(Kind.VANE_WORN, "long", side, 7.2).args())
                .containsExactly(
                        Arg.text("long"), Arg.word(word), Arg.number(7.2, 0, Unit.MM), Arg.number(5, 0, Unit.MM));
        assertThat(finding(Kind.VANE_FAILED, "long", side).args()).containsExactly(Arg.text("long"), Arg.word(word));
    }
}
