package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.MatchPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FirstGuessTest {

    private static final Setup DEMO = TypedSetup.demo().setup();

    private static MatchResult match(Double turnDeg) {
        return new MatchResult(
                List.of(),
                null,
                Verdict.NO_REFERENCE,
                Direction.WIDER,
                turnDeg,
                Direction.WIDER,
                null,
                null,
                null,
                null,
                null,
                null,
                0);
    }

    private static final Lever VANE = new Lever("long vane", "", 5, 14, 0.5, Widening.HIGHER);
    private static final Lever DROP = new Lever("drop point", "", 0, 8, 1, Widening.LOWER);
    private static final Lever SECRET = new Lever("other", "", 0, 8, 1, Widening.UNKNOWN);

    private static ReadSettings today(Map<String, Double> levers) {
        return new ReadSettings(levers, null, null, null);
    }

    /** Two degrees a step: 2.9° are one step, 3.1° two; only the first lever with a known direction is moved. */
    @ParameterizedTest
    @CsvSource({"2.9, 8.5, 1", "3.1, 9, 2", "-3.1, 7, -2", "0.9, 8, 0", "40, 14, 12", "-40, 5, -6"})
    void theFirstLeverIsMovedBySteps(double turnDeg, double setting, int steps) {
        List<FirstGuess.LeverStart> found = FirstGuess.of(
                List.of(SECRET, VANE, DROP), today(Map.of("long vane", 8.0, "drop point", 3.0)), match(turnDeg));
        assertThat(found)
                .containsExactly(
                        new FirstGuess.LeverStart("other", 4, 0),
                        new FirstGuess.LeverStart("long vane", setting, steps),
                        new FirstGuess.LeverStart("drop point", 3, 0));
    }

    @Test
    void lowerMayBeWider() {
        assertThat(FirstGuess.of(List.of(DROP), today(Map.of()), match(4.2)))
                .containsExactly(new FirstGuess.LeverStart("drop point", 2, 2));
        assertThat(FirstGuess.of(List.of(DROP), today(Map.of()), match(null)))
                .containsExactly(new FirstGuess.LeverStart("drop point", 4, 0));
    }

    /** A scale of quarters is shown and filled in as it is read, without noughts behind. */
    @Test
    void aSettingHasTheDecimalsThatItNeeds() {
        Lever fine = new Lever("fine", "", 0, 8, 0.25, Widening.HIGHER);
        List<FirstGuess.LeverStart> starts = FirstGuess.of(List.of(fine), today(Map.of("fine", 3.0)), match(2.1));
        assertThat(starts).containsExactly(new FirstGuess.LeverStart("fine", 3.25, 1));
        assertThat(FirstGuess.findings(starts).get(0).args().get(1))
                .hasToString("Figure[value=3.25, decimals=2, unit=NONE]");
        assertThat(ExactNumber.decimals(9)).isZero();
        assertThat(ExactNumber.decimals(8.5)).isEqualTo(1);
    }

    /** It is wanted only while no tested product is chosen and no lever typed; what is typed stays. */
    @Test
    void itFillsInWhatIsBlank() {
        Setup blank = DEMO.withMatch(DEMO.match()
                .withChosen("")
                .withSettings(DEMO.match().settings().withLevers(Map.of()).withTilt(EnteredQuantity.parse("1 °"))));
        Assessment assessment = Assessor.assess(blank);
        assertThat(assessment.findings()).extracting("key").contains("match.start.wider");
        Setup filled = FirstGuess.filledIn(blank, assessment, (value, decimals) -> String.valueOf(value));
        assertThat(filled.match().settings().levers()).containsOnlyKeys("long vane", "drop point");
        assertThat(filled.match().settings().tilt()).isEqualTo(EnteredQuantity.parse("1 °"));
        assertThat(Assessor.assess(filled).findings()).extracting("key").doesNotContain("match.start.wider");
        Setup chosen = MatchPaths.CHOSEN.path().set(blank, "urea-b");
        assertThat(Assessor.assess(chosen).findings()).extracting("key").doesNotContain("match.start.wider");
    }
}
