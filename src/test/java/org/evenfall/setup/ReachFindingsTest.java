package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Interval;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Reachability;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;
import org.evenfall.trays.WindLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The model's “not at this width” is a warning, and an even tray test lifts it. */
class ReachFindingsTest {

    private static MatchResult match(Reachability reachability) {
        return match(reachability, null);
    }

    private static MatchResult match(Reachability reachability, Interval againstDenseM) {
        return new MatchResult(
                List.of(),
                null,
                Verdict.NO_REFERENCE,
                Direction.AS_IT_IS,
                null,
                Direction.AS_IT_IS,
                againstDenseM == null ? null : Double.valueOf((againstDenseM.low() + againstDenseM.high()) / 2),
                againstDenseM,
                24.6,
                reachability,
                null,
                null,
                0);
    }

    private static TraysResult trays(Uniformity evenness, TrayTestResult.TestProof proof) {
        TrayTestResult test = new TrayTestResult(
                0,
                "",
                evenness,
                new ReadSettings(Map.of(), null, null, null),
                null,
                null,
                null,
                TestResults.conditions(24),
                proof);
        return new TraysResult(
                null, null, null, List.of(), List.of(test), List.of(), null, null, null, WindLimits.USUAL);
    }

    private static Uniformity caught(Double... grams) {
        return UniformityCalculator.of(new TrayCatches(
                List.of(-12.0, -8.0, -4.0, 0.0, 4.0, 8.0, 12.0),
                List.of(grams),
                24,
                DrivingPattern.BACK_AND_FORTH,
                0.25,
                1,
                0.04,
                0));
    }

    private static final Uniformity EVEN = caught(100.0, 103.0, 100.0, 97.0, 100.0, 103.0, 100.0);

    private static final Uniformity UNEVEN = caught(60.0, 90.0, 130.0, 140.0, 130.0, 90.0, 60.0);

    private static final TrayTestResult.TestProof OTHER_RATE =
            new TrayTestResult.TestProof(true, List.of(ConditionKind.RATE), List.of());

    private static final TraysResult NO_TEST =
            new TraysResult(null, null, null, List.of(), List.of(), List.of(), null, null, null, WindLimits.USUAL);

    private static List<String> found(YesNo only, MatchResult match, TraysResult trays) {
        ReadSetup read =
                TypedSetup.blank().choose(MatchPaths.TRAY_TEST_ONLY, only).read();
        return lines(Stream.concat(
                        ReachFindings.ofProduct(match, 36.0).stream(),
                        ReachFindings.ofMatch(read, match, trays, 36.0).stream())
                .toList());
    }

    @ParameterizedTest
    @CsvSource({"UNANSWERED, match.outOfReach", "NO, match.outOfReach", "YES, match.outOfReachTray"})
    void theModelAloneNeverStops(YesNo only, String key) {
        assertThat(found(only, match(Reachability.PROBABLY_NOT), NO_TEST))
                .containsExactly(
                        "NOTE PRODUCT product.reach.PROBABLY_NOT at  36m~0 24.6m~0",
                        "WARNING MATCH " + key + " at /match/trayTestOnly 36m~0 24.6m~0");
        assertThat(found(only, null, NO_TEST)).isEmpty();
    }

    @Test
    void betweenReachAndItsErrorItIsDoubtful() {
        assertThat(found(YesNo.NO, match(Reachability.DOUBTFUL), NO_TEST))
                .containsExactly(
                        "NOTE PRODUCT product.reach.DOUBTFUL at  36m~0 24.6m~0",
                        "WARNING MATCH match.reachDoubtful at  36m~0 24.6m~0");
        assertThat(found(YesNo.NO, match(Reachability.DOUBTFUL), trays(EVEN, TestResults.PROVES)))
                .containsExactly("NOTE PRODUCT product.reach.DOUBTFUL at  36m~0 24.6m~0");
        assertThat(found(YesNo.NO, match(Reachability.YES), NO_TEST))
                .containsExactly("NOTE PRODUCT product.reach.YES at  36m~0 24.6m~0");
    }

    @ParameterizedTest
    @CsvSource({
        "-5.2, -1.6, 'NOTE PRODUCT product.fliesShorter at  3.4m~0 1.6~0 5.2m~0'",
        "-1.6, 0, 'NOTE PRODUCT product.fliesAlike at '",
        "-1.6, 0.1, 'NOTE PRODUCT product.fliesAlike at '",
        "0, 0.1, 'NOTE PRODUCT product.fliesAlike at '",
        "0.4, 2, 'NOTE PRODUCT product.fliesFurther at  1.2m~0 0.4~0 2m~0'"
    })
    void aDifferenceThatItsErrorCanExplainIsNone(double lowM, double highM, String line) {
        assertThat(found(YesNo.NO, match(Reachability.YES, new Interval(lowM, highM)), NO_TEST))
                .containsExactly(line, "NOTE PRODUCT product.reach.YES at  36m~0 24.6m~0");
    }

    @Test
    void anEvenTestLiftsTheWarning() {
        String where = " at /match/trayTestOnly 36m~0 24.6m~0";
        MatchResult beyond = match(Reachability.PROBABLY_NOT);
        assertThat(found(YesNo.NO, beyond, trays(EVEN, TestResults.PROVES)))
                .contains("NOTE MATCH match.outOfReachProved" + where);
        assertThat(found(YesNo.NO, beyond, trays(UNEVEN, TestResults.PROVES)))
                .contains("WARNING MATCH match.outOfReachTray" + where);
        assertThat(found(YesNo.NO, beyond, trays(EVEN, OTHER_RATE)))
                .contains("WARNING MATCH match.outOfReachTray" + where);
    }
}
