package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first move on paper. */
class FirstMovesTest {

    private static final double GRANULE_G = 0.028;
    private static final CatchPlan PLAN = CatchPlans.of(150, 0.25, GRANULE_G, 0.1);
    private static final Map<String, Double> AT_10 = Map.of("A", 10.0, "B", 10.0);

    private static Lever lever(String label, Widening widening) {
        return new Lever(label, "", 0, 20, 1, widening);
    }

    private static FirstMove move(int trays, DrivingPattern pattern, Map<String, Double> settings, Lever... levers) {
        return FirstMoves.of(
                TrayLayouts.even(28, trays, 0.25, pattern),
                new Tramlines(28, pattern),
                PLAN,
                List.of(levers),
                settings,
                GRANULE_G);
    }

    private static FirstMove move(Lever... levers) {
        return move(7, DrivingPattern.BACK_AND_FORTH, AT_10, levers);
    }

    /** All limits at twice the noise, by hand: the middle three of seven trays, three pairs. */
    @Test
    void theLimitsAreTwiceTheNoise() {
        FirstMove move = move(lever("A", Widening.HIGHER));
        double expectedG = PLAN.runsNeeded() * PLAN.catchPerRunG();
        double noiseG = expectedG * PLAN.noiseAtRunsPercent() / 100;
        assertThat(move.runs()).isEqualTo(PLAN.runsNeeded());
        assertThat(move.expectedG()).isEqualTo(expectedG);
        assertThat(move.lowG()).isCloseTo(0.85 * expectedG, within(1e-9));
        assertThat(move.highG()).isCloseTo(1.15 * expectedG, within(1e-9));
        assertThat(move.middleTrays()).containsExactly(3, 4, 5);
        assertThat(move.aboveG()).isCloseTo(3 * expectedG + 2 * Math.sqrt(3) * noiseG, within(1e-9));
        assertThat(move.belowG()).isCloseTo(3 * expectedG - 2 * Math.sqrt(3) * noiseG, within(1e-9));
        assertThat(move.leftTrays()).containsExactly(1, 2, 3);
        assertThat(move.rightTrays()).containsExactly(7, 6, 5);
        assertThat(move.sidesG()).isCloseTo(2 * Math.sqrt(6) * noiseG, within(1e-9));
    }

    /** Too much in the middle: wider, the way that the owner typed; too little: as far back. */
    @ParameterizedTest
    @CsvSource({"HIGHER, 1", "LOWER, -1"})
    void aboveGoesWiderAndBelowNarrower(Widening widening, int up) {
        FirstMove move = move(lever("A", widening));
        assertThat(move.whenAbove().wider()).isTrue();
        assertThat(move.whenBelow().wider()).isFalse();
        assertThat(move.whenAbove().from()).isEqualTo(10);
        assertThat(move.whenAbove().steps() * up).isBetween(1, 3);
        assertThat(move.whenBelow().steps()).isEqualTo(-move.whenAbove().steps());
    }

    /** A lever whose direction nobody knows is left for the computer, and the next is taken. */
    @Test
    void onlyALeverOfKnownDirectionIsMoved() {
        FirstMove unknown = move(lever("A", Widening.UNKNOWN));
        assertThat(unknown.whenAbove()).isNull();
        assertThat(unknown.whenBelow()).isNull();
        assertThat(move(lever("A", Widening.UNKNOWN), lever("B", Widening.HIGHER))
                        .whenAbove()
                        .lever())
                .isEqualTo("B");
        assertThat(move().whenAbove()).isNull();
        assertThat(move(7, DrivingPattern.BACK_AND_FORTH, Map.of("B", 10.0), lever("A", Widening.HIGHER))
                        .whenAbove())
                .isNull();
    }

    @Test
    void atAnEndStopThereIsOnlyTheOtherWay() {
        FirstMove move = move(7, DrivingPattern.BACK_AND_FORTH, Map.of("A", 20.0), lever("A", Widening.HIGHER));
        assertThat(move.whenAbove()).isNull();
        assertThat(move.whenBelow().to()).isLessThan(20);
    }

    /** Round and round the two outermost trays are one place: no pair. More trays have more middle ones. */
    @Test
    void pairsAndMiddleFollowTheTrays() {
        assertThat(move(7, DrivingPattern.ROUND_AND_ROUND, AT_10).leftTrays()).containsExactly(2, 3);
        assertThat(move(13, DrivingPattern.BACK_AND_FORTH, AT_10).middleTrays()).containsExactly(5, 6, 7, 8, 9);
        assertThat(move(5, DrivingPattern.BACK_AND_FORTH, AT_10).middleTrays()).containsExactly(3);
    }

    /** Noise so large that the shape at the limit would empty a tray: still an answer. */
    @Test
    void muchNoiseIsNoError() {
        CatchPlan noisy = CatchPlans.of(5, 0.01, GRANULE_G, 1);
        FirstMove move = FirstMoves.of(
                TrayLayouts.even(28, 7, 0.01, DrivingPattern.BACK_AND_FORTH),
                new Tramlines(28, DrivingPattern.BACK_AND_FORTH),
                noisy,
                List.of(lever("A", Widening.HIGHER)),
                AT_10,
                GRANULE_G);
        assertThat(move.aboveG()).isGreaterThan(move.belowG());
    }
}
