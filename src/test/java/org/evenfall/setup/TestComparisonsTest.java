package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;
import org.junit.jupiter.api.Test;

/** Tray tests, each against the one before; a mean catch of 100 g of granules of 0.04 g has a noise of √(0.04/100) = 2 %. */
class TestComparisonsTest {

    private static final List<Lever> LEVERS = List.of(new Lever("drop point", "", 0, 10, 0.25, Widening.LOWER));

    private static Uniformity evenness(double shiftM, Double... grams) {
        return UniformityCalculator.of(new TrayCatches(
                List.of(-12 + shiftM, -6.0, 0.0, 6.0, 12.0),
                List.of(grams),
                24,
                DrivingPattern.BACK_AND_FORTH,
                0.25,
                1,
                0.04,
                0));
    }

    private static TrayTestResult test(int index, double dropPoint, Uniformity evenness) {
        return TestResults.proving(
                index, "", 24, evenness, new ReadSettings(Map.of("drop point", dropPoint), null, null, null));
    }

    private static final Uniformity UNEVEN = evenness(0, 110.0, 90.0, 110.0, 90.0, 100.0);

    private static final Uniformity NEARLY_THE_SAME = evenness(0, 108.0, 92.0, 108.0, 92.0, 100.0);

    private static final Uniformity EVEN = evenness(0, 100.0, 100.0, 100.0, 100.0, 100.0);

    /**
     * Differences of 2 % on four of five trays: √(16 / 2 / 4) = 1.4142 %. Noise 2 %; 4 × 1.4142² = 8 is less than 4 × 9.4877
     * (95 % of χ² with 4 degrees of freedom).
     */
    @Test
    void aRepeatWithinTheNoiseRepeatsWell() {
        Assessed<List<TestComparison>> compared =
                TestComparisons.of(List.of(test(0, 4, UNEVEN), test(2, 4.0001, NEARLY_THE_SAME)), LEVERS);
        assertThat(lines(compared.findings()))
                .containsExactly("NOTE TRAYS trays.repeatsWell at /trays/tests/2 3~0 1~0 1.4142%~0 2%~0");
        TestComparison one = compared.present().get(0);
        assertThat(one.first()).isZero();
        assertThat(one.second()).isEqualTo(2);
        assertThat(one.sameSettings()).isTrue();
        // deviations of 10 on four of five trays: √(400 / 4) = 10 %; of 8: √(256 / 4) = 8 %
        assertThat(one.change().cvChangePercent()).isEqualTo(-2, within(1e-9));
    }

    /** Differences of 10 %: √(400 / 2 / 4) = 7.0711 %; 4 × 50 = 200 is more than 4 × 9.4877. */
    @Test
    void aRepeatBeyondTheNoiseRepeatsBadly() {
        assertThat(lines(TestComparisons.of(List.of(test(1, 4, UNEVEN), test(2, 4, EVEN)), LEVERS)
                        .findings()))
                .containsExactly("WARNING TRAYS trays.repeatsBadly at /trays/tests/2 3~0 2~0 7.0711%~0 2%~0");
    }

    /** An even second test is surely the better one, stated as 99 %; two equal CVs are even chances. */
    @Test
    void otherSettingsAreWeighed() {
        Assessed<List<TestComparison>> compared = TestComparisons.of(
                List.of(test(0, 4, UNEVEN), test(1, 4.25, EVEN), test(2, 4, UNEVEN), test(3, 3, UNEVEN)), LEVERS);
        assertThat(lines(compared.findings()))
                .containsExactly(
                        "NOTE TRAYS trays.against at /trays/tests/1 2~0 1~0 99%~0",
                        "NOTE TRAYS trays.against at /trays/tests/2 3~0 2~0 1%~0",
                        "NOTE TRAYS trays.against at /trays/tests/3 4~0 3~0 50%~0");
        assertThat(compared.present()).extracting(TestComparison::sameSettings).containsOnly(false);
    }

    @Test
    void otherPlacesAreNoRepeat() {
        Uniformity shifted = evenness(0.5, 110.0, 90.0, 110.0, 90.0, 100.0);
        Assessed<List<TestComparison>> compared =
                TestComparisons.of(List.of(test(0, 4, UNEVEN), test(1, 4, shifted)), LEVERS);
        assertThat(compared.present().get(0).sameSettings()).isTrue();
        assertThat(lines(compared.findings()))
                .containsExactly("NOTE TRAYS trays.against at /trays/tests/1 2~0 1~0 49.2331%~0");
    }

    @Test
    void oneTestHasNothingToCompareWith() {
        Assessed<List<TestComparison>> compared = TestComparisons.of(List.of(test(0, 4, UNEVEN)), LEVERS);
        assertThat(compared.present()).isEmpty();
        assertThat(compared.findings()).isEmpty();
    }
}
