package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.evenfall.rate.BucketAssessment.Catch;
import org.evenfall.rate.BucketAssessment.Wanted;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextOpeningTest {

    /** All outlets together. */
    private static final OpeningTable TABLE = new OpeningTable(
            List.of(new FlowPoint(10, 30), new FlowPoint(20, 60), new FlowPoint(30, 100), new FlowPoint(40, 150)));

    private static Wanted wanted(@Nullable OpeningTable table) {
        return new Wanted(80.0, 24.0, 10.0, 2, 5, table);
    }

    /** A catch in 30 s: flow is twice the weight. */
    private static Catch caught(double openingLeft, double leftKg, double openingRight, double rightKg) {
        return new Catch(openingLeft, openingRight, 30, List.of(leftKg), List.of(rightKg));
    }

    private static NextOpening left(List<Catch> tests, @Nullable OpeningTable table) {
        return Objects.requireNonNull(NextOpening.of(tests, true, 40, wanted(table)));
    }

    /** Table: 60 at 20; caught 2 × 33 = 66, so all flows × 1.1; 80 is reached at 20 + 10 (80 − 66)/(110 − 66). */
    @Test
    void alongTheTableScaledToWhatWasCaught() {
        NextOpening next = left(List.of(caught(20, 16.5, 22, 15)), TABLE);
        assertThat(next.source()).isEqualTo(OpeningSource.TABLE_SCALED);
        assertThat(next.opening()).isCloseTo(20 + 10 * 14 / 44.0, within(1e-9));
    }

    @Test
    void eachSideByItsOwnCatches() {
        List<Catch> tests = List.of(caught(20, 16.0, 21, 15.0), caught(28, 24.0, 31, 25.0));
        assertThat(left(tests, TABLE)).isEqualTo(new NextOpening(24.0, OpeningSource.BETWEEN_MEASURED));
        assertThat(NextOpening.of(tests, false, 40, wanted(TABLE)))
                .isEqualTo(new NextOpening(26.0, OpeningSource.BETWEEN_MEASURED));
    }

    @Test
    void theOrderOfTestsDoesNotMatterBetweenMeasuredPoints() {
        List<Catch> tests = List.of(caught(28, 24.0, 31, 25.0), caught(20, 16.0, 21, 15.0));
        assertThat(left(tests, null).opening()).isCloseTo(24, within(1e-9));
    }

    @Test
    void whereMeasuredPointsDoNotEncloseTheWantedFlowTheLastOneCounts() {
        List<Catch> tests = List.of(caught(20, 12.0, 21, 12.0), caught(25, 16.0, 26, 16.0));
        assertThat(left(tests, null)).isEqualTo(new NextOpening(25 * 20 / 16.0, OpeningSource.PROPORTIONAL));
    }

    @Test
    void measuredPointsThatDoNotRiseAreNotJoined() {
        List<Catch> tests = List.of(caught(20, 24.0, 21, 24.0), caught(25, 16.0, 26, 16.0));
        assertThat(left(tests, null).source()).isEqualTo(OpeningSource.PROPORTIONAL);
    }

    @Test
    void ofTwoTestsAtOneOpeningTheLaterCounts() {
        List<Catch> tests = List.of(caught(25, 12.0, 26, 12.0), caught(25, 16.0, 26, 16.0));
        assertThat(left(tests, null).opening()).isCloseTo(25 * 20 / 16.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // caught at 40, where the table has 150: the end of the scaled table is 4 × the weight
        "20.1, TABLE_SCALED",
        "20.0, TABLE_SCALED",
        "19.9, BEYOND_TABLE"
    })
    void neverBeyondTheTable(double kg, OpeningSource source) {
        NextOpening next = left(List.of(caught(40, kg, 39, 10)), TABLE);
        assertThat(next.source()).isEqualTo(source);
        assertThat(next.opening() == null).isEqualTo(source == OpeningSource.BEYOND_TABLE);
    }

    @ParameterizedTest
    @CsvSource({"9.9, PROPORTIONAL", "10, TABLE_SCALED", "40, TABLE_SCALED", "40.1, PROPORTIONAL"})
    void inProportionWhereTheTestLiesBeyondTheTable(double opening, OpeningSource source) {
        assertThat(left(List.of(caught(opening, 20.0, 30, 10)), TABLE).source()).isEqualTo(source);
    }

    @Test
    void nothingWithoutACatchOrFromAClosedShutter() {
        Catch rightOnly = new Catch(20, 21, 30, List.of(), List.of(15.0));
        assertThat(NextOpening.of(List.of(rightOnly), true, 40, wanted(TABLE))).isNull();
        assertThat(NextOpening.of(List.of(caught(0, 1.0, 21, 15.0)), true, 40, wanted(null)))
                .isNull();
        assertThat(NextOpening.of(List.of(caught(0.1, 1.0, 21, 15.0)), true, 40, wanted(null)))
                .isNotNull();
    }
}
