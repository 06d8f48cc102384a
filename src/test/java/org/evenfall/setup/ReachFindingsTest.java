package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.reference.Direction;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The model's “not at this width” is a warning, and an even tray test lifts it. */
class ReachFindingsTest {

    private static MatchResult match(Double widestM, boolean outOfReach) {
        return new MatchResult(
                List.of(), null, Verdict.NO_REFERENCE, Direction.AS_IT_IS, null, widestM, outOfReach, null, null, 0);
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
        return new TraysResult(null, null, null, List.of(), List.of(test), List.of(), null, null, null);
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
            new TraysResult(null, null, null, List.of(), List.of(), List.of(), null, null, null);

    private static List<String> found(YesNo only, MatchResult match, TraysResult trays) {
        ReadSetup read =
                TypedSetup.blank().choose(MatchPaths.TRAY_TEST_ONLY, only).read();
        return lines(ReachFindings.of(read, match, trays, 36.0));
    }

    @ParameterizedTest
    @CsvSource({"UNANSWERED, match.outOfReach", "NO, match.outOfReach", "YES, match.outOfReachTray"})
    void theModelAloneNeverStops(YesNo only, String key) {
        assertThat(found(only, match(24.6, true), NO_TEST))
                .containsExactly("WARNING MATCH " + key + " at /match/trayTestOnly 36m~0 24.6m~0");
        assertThat(found(only, match(null, true), NO_TEST))
                .containsExactly("WARNING MATCH " + key + " at /match/trayTestOnly 36m~0 0m~0");
        assertThat(found(only, match(24.6, false), NO_TEST)).isEmpty();
        assertThat(found(only, null, NO_TEST)).isEmpty();
    }

    @Test
    void anEvenTestLiftsTheWarning() {
        String where = " at /match/trayTestOnly 36m~0 24.6m~0";
        assertThat(found(YesNo.NO, match(24.6, true), trays(EVEN, TestResults.PROVES)))
                .containsExactly("NOTE MATCH match.outOfReachProved" + where);
        assertThat(found(YesNo.NO, match(24.6, true), trays(UNEVEN, TestResults.PROVES)))
                .containsExactly("WARNING MATCH match.outOfReachTray" + where);
        assertThat(found(YesNo.NO, match(24.6, true), trays(EVEN, OTHER_RATE)))
                .containsExactly("WARNING MATCH match.outOfReachTray" + where);
    }
}
