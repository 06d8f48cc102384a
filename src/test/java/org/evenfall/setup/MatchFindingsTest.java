package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.quantity.Interval;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternChange;
import org.evenfall.reference.PatternOverlay;
import org.evenfall.reference.RankedProduct;
import org.evenfall.reference.Reachability;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The match in findings, of results made up for it. */
class MatchFindingsTest {

    private static final String DENSE_SHORTER = "NOTE MATCH match.noReference.WIDER  []";

    private static RankedProduct product() {
        return new RankedProduct(
                "a",
                "Product a",
                28,
                new RankedProduct.Properties(0.98, null, null),
                null,
                new RankedProduct.Difference(null, null, null, null),
                new RankedProduct.ThrowDifference(-1, new Interval(-2, 0), -5),
                1,
                1,
                1,
                true,
                Verdict.HOLD,
                Direction.WIDER,
                null);
    }

    private static MatchResult result(@Nullable RankedProduct chosen, Verdict verdict, Direction direction) {
        return result(chosen, verdict, direction, Reachability.YES, null, null);
    }

    private static MatchResult result(
            @Nullable RankedProduct chosen,
            Verdict verdict,
            Direction direction,
            Reachability reachability,
            @Nullable PatternChange pattern,
            @Nullable PatternOverlay overlay) {
        return new MatchResult(
                List.of(),
                chosen,
                verdict,
                direction,
                null,
                Direction.WIDER,
                -1.4,
                new Interval(-2, -1),
                26.4,
                reachability,
                pattern,
                overlay,
                1);
    }

    /** Reference 7 %, kept 7 + change, between 8 and 19 %, set anew 6 %. */
    private static MatchResult pattern(double change, @Nullable PatternOverlay overlay) {
        return result(
                product(),
                Verdict.HOLD,
                Direction.AS_IT_IS,
                Reachability.YES,
                new PatternChange(7, 7 + change, new Interval(8, 19), change, 6),
                overlay);
    }

    private static PatternOverlay overlay(String id, String name) {
        return new PatternOverlay(id, name, List.of(), List.of(), List.of());
    }

    private static List<String> findings(Entered entered, MatchResult result, boolean chosenKnown) {
        return lines(new MatchFindings(entered.read(), result, chosenKnown).all());
    }

    private static Entered without(YesNo answer) {
        return Entered.inEmpty().with(MatchPaths.START_WITHOUT_REFERENCE, answer);
    }

    @Test
    void aWidthOutOfReachIsReportedElsewhere() {
        assertThat(findings(
                        Entered.inEmpty(),
                        result(
                                product(),
                                Verdict.NOT_AT_THIS_WIDTH,
                                Direction.WIDER,
                                Reachability.PROBABLY_NOT,
                                null,
                                null),
                        true))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "HOLD, 'NOTE MATCH match.hold  [Product a]'",
        "HOLD_AS_START, 'NOTE MATCH match.holdAsStart  [Product a, direction.NARROWER]'",
        "FIRST_GUESS_ONLY, 'NOTE MATCH match.firstGuess  [Product a, direction.NARROWER]'",
        "NOT_AT_THIS_WIDTH, ''",
        "NO_REFERENCE, ''"
    })
    void theVerdictOnTheChosenProduct(Verdict verdict, String line) {
        assertThat(findings(Entered.inEmpty(), result(product(), verdict, Direction.NARROWER), true))
                .isEqualTo(line.isEmpty() ? List.of() : List.of(line));
    }

    /** A product that was chosen counts in any case; the closest one only where a start without is not wanted. */
    @ParameterizedTest
    @CsvSource({"true, YES, true", "true, NO, true", "false, NO, true", "false, UNANSWERED, true", "false, YES, false"})
    void withoutAReferenceADenseProductIsComparedWith(boolean known, YesNo without, boolean byVerdict) {
        MatchResult result = result(product(), Verdict.HOLD, Direction.AS_IT_IS);
        assertThat(findings(without(without), result, known))
                .containsExactly(byVerdict ? "NOTE MATCH match.hold  [Product a]" : DENSE_SHORTER);
    }

    /** A change of the CV by less than 2 points counts as none; its interval is 8 to 19 less the 7 of the reference. */
    @ParameterizedTest
    @CsvSource({
        "-3, 'match.keptSame  [Product b]'",
        "1.9, 'match.keptSame  [Product b]'",
        "2, 'match.keptWorse  [Product b, 2:0, 1:0, 12:0]'",
        "2.1, 'match.keptWorse  [Product b, 2.1:0, 1:0, 12:0]'"
    })
    void whatTheLandingModelExpects(double change, String line) {
        assertThat(findings(Entered.inEmpty(), pattern(change, overlay("b", "Product b")), true))
                .containsExactly("NOTE MATCH match.hold  [Product a]", "NOTE MATCH " + line);
    }

    @Test
    void againstADenseProductTheModelNamesNone() {
        assertThat(findings(Entered.inEmpty(), pattern(3, overlay("", "")), true))
                .contains("NOTE MATCH match.keptDense  [3:0, 1:0, 12:0]");
        assertThat(findings(Entered.inEmpty(), pattern(1, overlay("", "")), true))
                .contains("NOTE MATCH match.keptDenseSame  []");
        assertThat(findings(Entered.inEmpty(), pattern(1, null), true))
                .containsExactly("NOTE MATCH match.hold  [Product a]");
    }

    @Test
    void todaysSettingsHaveNoNameOfTheirOwn() {
        assertThat(findings(Entered.inEmpty(), pattern(3, overlay("(today)", "")), true))
                .contains("NOTE MATCH match.keptWorse  [match.today, 3:0, 1:0, 12:0]");
    }

    @Test
    void aDirectionIsAWordOfTheBundle() {
        assertThat(MatchFindings.directionKey(Direction.AS_IT_IS)).isEqualTo("direction.AS_IT_IS");
    }
}
