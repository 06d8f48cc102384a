package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.WidthScan;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line of trays under one pass, overlapped by arithmetic. */
class SinglePassAssessorTest {

    /** Every 4 m from −16 to 16 m; a triangle, which is level at 16 m: 20 at every place. */
    private static final String[] TRIANGLE = {"0", "5", "10", "15", "20", "15", "10", "5", "0"};

    private static TypedSetup tray(TypedSetup typed, int index, String position, String grams) {
        return typed.type(TrayPaths.LINE_POSITION, TrayPaths.LINE.item(index), position)
                .type(TrayPaths.LINE_AMOUNT, TrayPaths.LINE.item(index), grams);
    }

    private static TypedSetup line(String... grams) {
        TypedSetup typed = TypedSetup.blank();
        for (int i = 0; i < grams.length; i++) {
            typed = tray(typed, i, (4 * i - 16) + " m", grams[i] + " g");
        }
        return typed;
    }

    private static Assessed<SinglePassTest> assess(TypedSetup typed, double widthM) {
        ReadSetup read = typed.read();
        return SinglePassAssessor.assess(read, TypedSetup.product(0.75, 46.0), widthM, TestGround.of(read));
    }

    @Test
    void aTriangleIsLevelAtHalfItsReach() {
        Assessed<SinglePassTest> assessed = assess(line(TRIANGLE), 16);
        SinglePassTest test = assessed.present();
        assertThat(test.overlap().mean()).isEqualTo(20, within(1e-9));
        assertThat(test.overlap().cvPercent()).isEqualTo(0, within(1e-9));
        assertThat(test.overlap().width()).isEqualTo(16);
        assertThat(test.positionsM()).containsExactly(-16.0, -12.0, -8.0, -4.0, 0.0, 4.0, 8.0, 12.0, 16.0);
        assertThat(test.amountsG()).containsExactly(0.0, 5.0, 10.0, 15.0, 20.0, 15.0, 10.0, 5.0, 0.0);
        assertThat(lines(assessed.findings()).get(0)).isEqualTo("NOTE TRAYS trays.line.cv at /trays/line 16m~0 0%~0");
        assertThat(lines(assessed.findings()).get(1)).startsWith("NOTE TRAYS trays.line.widths at /trays/line [4..");
        assertThat(assessed.findings()).hasSize(2);
    }

    /** At 32 m nothing overlaps; places 4 m apart from 0 to 60: 20, 15, 10, 5, 0, 5, 10, 15 and so on, mean 10. */
    @Test
    void atTheFullReachTheTriangleIsNotEven() {
        // Σ (x − 10)² = 100 + 25 + 0 + 25 + 100 + 25 + 0 + 25 = 300 for 8 places, 600 for 16; √(600 / 15) = 6.3246 of
        // 10
        Assessed<SinglePassTest> assessed = assess(line(TRIANGLE), 32);
        assertThat(lines(assessed.findings()).get(0))
                .isEqualTo("NOTE TRAYS trays.line.cv at /trays/line 32m~0 63.2456%~0");
    }

    @Test
    void theWidthsReportedAreThoseOfTheField() {
        Assessed<SinglePassTest> assessed = assess(line(TRIANGLE), 16);
        List<WidthScan.Interval> narrow = assessed.present().atMost10();
        List<WidthScan.Interval> wide = assessed.present().atMost15();
        assertThat(total(narrow)).isLessThan(total(wide) - 0.01);
        assertThat(narrow).anyMatch(one -> one.from() <= 16 && one.to() >= 16);
        assertThat(assessed.findings().get(1).args())
                .containsExactly(new Arg.Series(wide.stream()
                        .<Arg>map(one -> new Arg.Span(one.from(), one.to()))
                        .toList()));
    }

    private static double total(List<WidthScan.Interval> intervals) {
        return intervals.stream().mapToDouble(one -> one.to() - one.from()).sum();
    }

    /** A heap of 2 m in the middle of 32 m leaves gaps at every width from 4 m on. */
    @Test
    void aHeapHasNoWidth() {
        TypedSetup heap = tray(TypedSetup.blank(), 0, "-16 m", "0 g");
        heap = tray(tray(heap, 1, "-1 m", "0 g"), 2, "0 m", "20 g");
        heap = tray(tray(heap, 3, "1 m", "0 g"), 4, "16 m", "0 g");
        Assessed<SinglePassTest> assessed = assess(heap, 16);
        assertThat(lines(assessed.findings()))
                .contains(
                        "NOTE TRAYS trays.line.count at /trays/line 5~0 9~0 99~0",
                        "NOTE TRAYS trays.line.noWidth at /trays/line");
        assertThat(assessed.present().atMost15()).isEmpty();
    }

    /** 5 % of the largest catch of 20 g is 1 g, at either end. */
    @ParameterizedTest
    @CsvSource({"1, 0, ''", "1.1, 0, 5.5", "0, 1, ''", "0, 1.1, 5.5", "1.2, 1.1, 6"})
    void aLineMustReachWhereNothingFalls(String left, String right, String percent) {
        String[] grams = TRIANGLE.clone();
        grams[0] = left;
        grams[8] = right;
        assertThat(lines(assess(line(grams), 16).findings()))
                .filteredOn(line -> line.contains("edge"))
                .isEqualTo(
                        percent.isEmpty()
                                ? List.of()
                                : List.of("WARNING TRAYS trays.line.edge at /trays/line " + percent + "%~0"));
    }

    /** Usual are 9 to 99 trays; three have a shape, two have none. */
    @ParameterizedTest
    @CsvSource({
        "2, true, false",
        "3, true, true",
        "8, true, true",
        "9, false, true",
        "99, false, true",
        "100, true, true"
    })
    void theNumberOfTrays(int trays, boolean noted, boolean assessed) {
        TypedSetup typed = TypedSetup.blank();
        for (int i = 0; i < trays; i++) {
            typed = tray(typed, i, "" + (i - trays / 2) * 0.5, i == trays / 2 ? "20 g" : "10 g");
        }
        Assessed<SinglePassTest> line = assess(typed, 12);
        assertThat(lines(line.findings()))
                .filteredOn(one -> one.contains("count"))
                .isEqualTo(
                        noted
                                ? List.of("NOTE TRAYS trays.line.count at /trays/line " + trays + "~0 9~0 99~0")
                                : List.of());
        assertThat(line.result() != null).isEqualTo(assessed);
    }

    @Test
    void withoutALineThereIsNothingToReport() {
        assertThat(assess(TypedSetup.blank(), 16).result()).isNull();
        assertThat(assess(TypedSetup.blank(), 16).findings()).isEmpty();
        // half a tray is none
        TypedSetup half = tray(tray(TypedSetup.blank(), 0, "", "12 g"), 1, "4 m", "");
        assertThat(assess(half, 16).findings()).isEmpty();
    }

    @Test
    void nothingCaughtIsNoTest() {
        Assessed<SinglePassTest> assessed = assess(line("0", "0", "0", "0", "0", "0", "0", "0", "0"), 16);
        assertThat(assessed.result()).isNull();
        assertThat(assessed.findings()).isEmpty();
    }

    /** Typed from right to left, and 4 m twice: the later of the two counts. */
    @Test
    void traysAreSortedAndTheLaterOfTwoCounts() {
        TypedSetup typed = tray(tray(TypedSetup.blank(), 0, "4 m", "7 g"), 1, "0 m", "20 g");
        typed = tray(tray(typed, 2, "-4 m", "9 g"), 3, "4 m", "8 g");
        Assessed<SinglePassTest> assessed = assess(typed, 8);
        assertThat(assessed.present().positionsM()).containsExactly(-4.0, 0.0, 4.0);
        assertThat(assessed.present().amountsG()).containsExactly(9.0, 20.0, 8.0);
        assertThat(lines(assessed.findings()).get(0))
                .isEqualTo("WARNING TRAYS trays.line.twice at /trays/line/3/position '4 m'");
    }

    /** A ramp from 0 to 20 g over 8 m, driven on 8 m: round and round 20 falls on 0; back and forth ramps meet their like. */
    @Test
    void theDrivingPatternCounts() {
        TypedSetup ramp = tray(tray(tray(TypedSetup.blank(), 0, "-4 m", "0 g"), 1, "0 m", "10 g"), 2, "4 m", "20 g");
        Assessed<SinglePassTest> around =
                assess(ramp.choose(StartPaths.DRIVING_PATTERN, DrivingPattern.ROUND_AND_ROUND), 8);
        Assessed<SinglePassTest> back =
                assess(ramp.choose(StartPaths.DRIVING_PATTERN, DrivingPattern.BACK_AND_FORTH), 8);
        // one working width of two places, and two of them
        assertThat(around.present().overlap().positions()).hasSize(2);
        assertThat(back.present().overlap().positions()).hasSize(4);
    }
}
