package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.assertj.core.data.Offset;
import org.evenfall.finding.Finding;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.WheelMarks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One tray test: five trays of 0.25 m² on 24 m, at −12, −6, 0, 6 and 12 m, unless typed otherwise. */
class TrayTestAssessorTest {

    private static final Offset<Double> EXACT = within(1e-9);

    private static final EntryPath<TrayTestEntry> SECOND = TrayPaths.TESTS.item(1);

    private final List<Finding> findings = new ArrayList<>();

    private static TypedSetup caught(String... catches) {
        return TypedSetup.blank()
                .type(TrayPaths.TRAY_COUNT, "5")
                .type(TrayPaths.TEST_CATCHES, TrayPaths.TESTS.item(0), "1 g")
                .type(TrayPaths.TEST_CATCHES, SECOND, catches);
    }

    private static TypedSetup usual() {
        return caught("110 g", "90 g", "110 g", "90 g", "100 g");
    }

    private Uniformity evenness(TypedSetup typed, Integer runsNeeded) {
        ReadSetup read = typed.read();
        TestGround ground = TestGround.of(read);
        CatchPlan plan = runsNeeded == null ? null : new CatchPlan(5, 100, 10, 1, runsNeeded, 4, null);
        return new TrayTestAssessor(
                        read,
                        TypedSetup.product(0.75, 46.0),
                        ground,
                        new Tramlines(24, DrivingPattern.BACK_AND_FORTH),
                        plan,
                        new TrayNoise(0.04, 0),
                        findings)
                .evenness(SECOND);
    }

    /**
     * Mean 100 g; deviations of 10 on four of five trays: √(400 / 4) = 10 %. By ground, (100 + 100 + 100 + 95) × 6 / 24 =
     * 98.75 g on 0.25 m²: 3950 kg/ha. Noise √(0.04 / 100) = 2 %.
     */
    @Test
    void evennessAndRateOfOneRun() {
        Uniformity evenness = evenness(usual(), null);
        assertThat(evenness.cvPercent()).isEqualTo(10, EXACT);
        assertThat(evenness.positionsM()).containsExactly(-12.0, -6.0, 0.0, 6.0, 12.0);
        assertThat(evenness.relativePercent().get(4)).isEqualTo(100, EXACT);
        assertThat(evenness.catches().meanRateKgPerHa()).isEqualTo(3950, EXACT);
        assertThat(evenness.cv().noisePercent()).isEqualTo(2, EXACT);
        assertThat(findings).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"'', -, 1", "'', 1, 1", "'', 2, 1", "1, 2, 1", "2, 2, 2", "3, 2, 3", "4, 5, 4"})
    void runsShareTheCatchAndMayBeTooFew(String typed, Integer needed, int runs) {
        Uniformity evenness = evenness(usual().type(TrayPaths.TEST_RUNS, SECOND, typed), needed);
        assertThat(evenness.catches().meanRateKgPerHa()).isEqualTo(3950.0 / runs, EXACT);
        assertThat(lines(findings))
                .isEqualTo(
                        needed != null && runs < needed
                                ? List.of("NOTE TRAYS trays.fewRuns at /trays/tests/1/runs " + runs + "~0 " + needed
                                        + "~0")
                                : List.of());
    }

    @Test
    void aBlankTestIsPassedOver() {
        assertThat(evenness(caught("", " "), null)).isNull();
        assertThat(evenness(caught(), null)).isNull();
        assertThat(findings).isEmpty();
    }

    @Test
    void fourTraysAreTooFew() {
        assertThat(evenness(caught("110 g", "90 g", "", "90 g", "100 g"), null)).isNull();
        assertThat(lines(findings)).containsExactly("NOTE TRAYS trays.tooFew at /trays/tests/1/catches 4~0 5~0");
    }

    /** Six trays at −12, −7.2, −2.4, 2.4, 7.2 and 12 m, the second is left out. */
    @Test
    void aSpiltTrayIsLeftOutWithItsPlace() {
        TypedSetup typed = caught("110 g", "", "110 g", "90 g", "90 g", "100 g").type(TrayPaths.TRAY_COUNT, "6");
        Uniformity evenness = evenness(typed, null);
        assertThat(evenness.trays()).isEqualTo(5);
        assertThat(evenness.positionsM().get(1)).isEqualTo(-2.4, EXACT);
        assertThat(evenness.cvPercent()).isEqualTo(10, EXACT);
        assertThat(lines(findings)).containsExactly("NOTE TRAYS trays.spilt at /trays/tests/1/catches 1~0");
    }

    @Test
    void nothingCaughtStops() {
        assertThat(evenness(caught("0 g", "0 g", "0 g", "0 g", "0 g"), null)).isNull();
        assertThat(lines(findings)).containsExactly("STOP TRAYS trays.nothingCaught at /trays/tests/1/catches");
    }

    @Test
    void asManyCatchesAsTrays() {
        assertThat(evenness(caught("110 g", "90 g", "110 g", "90 g"), null)).isNull();
        assertThat(evenness(caught("110 g", "90 g", "110 g", "90 g", "100 g", "99 g"), null))
                .isNull();
        assertThat(lines(findings))
                .containsExactly(
                        "STOP TRAYS trays.count at /trays/tests/1/catches 5~0 4~0",
                        "STOP TRAYS trays.count at /trays/tests/1/catches 5~0 6~0");
    }

    /** Without a number of trays there are as many as catches, spaced evenly also where a new test has closer ones. */
    @ParameterizedTest
    @CsvSource({"24, 7", "28, 7", "28, 9", "36, 13", "28, 33"})
    void anOlderTestWasSpacedEvenly(double widthM, int trays) {
        TypedSetup typed = caught(Collections.nCopies(trays, "100 g").toArray(new String[0]))
                .type(TrayPaths.TRAY_COUNT, "");
        ReadSetup read = typed.read();
        TestGround ground = TestGround.of(read);
        TrayTestAssessor assessor = new TrayTestAssessor(
                read,
                TypedSetup.product(0.75, 46.0),
                ground,
                new Tramlines(widthM, DrivingPattern.BACK_AND_FORTH),
                null,
                new TrayNoise(0.04, 0),
                findings);
        List<Double> even = TrayLayouts.asideFrom(
                        WheelMarks.USUAL, TrayLayouts.even(widthM, trays, 0.25, DrivingPattern.BACK_AND_FORTH), 0.5)
                .positionsM();
        assertThat(assessor.evenness(SECOND).positionsM()).isEqualTo(even);
        assertThat(assessor.places(SECOND)).isEqualTo(even);
        assertThat(findings).isEmpty();
    }

    @Test
    void withoutANumberOfTraysFourCatchesAreTooFewAndThirtyFourTooMany() {
        String[] four = {"1 g", "2 g", "3 g", "4 g"};
        assertThat(evenness(caught(four).type(TrayPaths.TRAY_COUNT, ""), null)).isNull();
        String[] many = Collections.nCopies(34, "100 g").toArray(new String[0]);
        assertThat(evenness(caught(many).type(TrayPaths.TRAY_COUNT, ""), null)).isNull();
        // positions of which none can be read are no places
        String[] wrong = {"x", "x", "x", "x", "x"};
        assertThat(evenness(usual().type(TrayPaths.TEST_POSITIONS, SECOND, wrong), null))
                .isNull();
        assertThat(lines(findings))
                .containsExactly(
                        "NOTE TRAYS trays.tooFew at /trays/tests/1/catches 4~0 5~0",
                        "STOP TRAYS trays.count at /trays/tests/1/catches 33~0 34~0",
                        "STOP TRAYS trays.count at /trays/tests/1/catches 0~0 5~0");
    }

    /** By ground (100 × 7 + 100 × 5 + 100 × 5.5 + 95 × 6.5) / 24 = 2367.5 / 24 g, × 40 kg/ha. */
    @Test
    void typedPositionsComeBeforeTheLayout() {
        TypedSetup typed = usual().type(TrayPaths.TEST_POSITIONS, SECOND, "-12", "-5", "0", "5,5", "12 m");
        Uniformity evenness = evenness(typed, null);
        assertThat(evenness.positionsM()).containsExactly(-12.0, -5.0, 0.0, 5.5, 12.0);
        assertThat(evenness.catches().meanRateKgPerHa()).isEqualTo(2367.5 / 24 * 40, within(1e-6));
        assertThat(findings).isEmpty();
        TypedSetup fewer = usual().type(TrayPaths.TEST_POSITIONS, SECOND, "-12", "", "0", "5,5", "12 m");
        assertThat(evenness(fewer, null)).isNull();
        assertThat(lines(findings)).containsExactly("STOP TRAYS trays.count at /trays/tests/1/catches 4~0 5~0");
    }

    @Test
    void blankPositionsAreNone() {
        TypedSetup typed = usual().type(TrayPaths.TEST_POSITIONS, SECOND, "", "");
        assertThat(evenness(typed, null).positionsM()).containsExactly(-12.0, -6.0, 0.0, 6.0, 12.0);
    }

    /** Sorted 15, 16, 17, 18, 81: median 17, and 18 is near it. */
    @Test
    void aSlipIsAskedBackAtItsOwnTray() {
        Uniformity evenness = evenness(caught("16 g", " 81 g", "18 g", "15 g", "17 g"), null);
        assertThat(evenness.trays()).isEqualTo(5);
        assertThat(lines(findings))
                .containsExactly("WARNING TRAYS trays.swapped at /trays/tests/1/catches/1 '81' '18'");
    }
}
