package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.LEVER;
import static org.evenfall.trays.TestFields.at;
import static org.evenfall.trays.TestFields.stated;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ObservationTest {

    private static final Lever HALF_STEPS = new Lever(LEVER, "", 0, 20, 0.5, Widening.HIGHER);

    @Test
    void stepsAreCountedFromTheLastTestInTheScaleOfTheLever() {
        Lever unknown = new Lever("other", "", 0, 20, 1, Widening.HIGHER);
        List<Observation> both = Observation.of(
                List.of(at(8, stated(20, 3, 0, -25, 7)), at(10, stated(20, 3, 0, 4, -2))),
                List.of(HALF_STEPS, unknown));
        assertThat(both).hasSize(2);
        assertThat(both.get(0).centrePercent()).isEqualTo(-25);
        assertThat(both.get(0).quarterPercent()).isEqualTo(7);
        assertThat(both.get(0).steps()).containsExactly(-4, 0);
        assertThat(both.get(1).steps()).containsExactly(0, 0);
        // standard error 1
        assertThat(both.get(0).centreVariance()).isEqualTo(1);
        assertThat(both.get(0).quarterVariance()).isEqualTo(1);
    }

    @Test
    void aLeverWithoutASettingIsTakenAsNotMoved() {
        AdviceInput.DoneTest without = new AdviceInput.DoneTest(stated(20, 3, 0, -25, 7), Map.of(), null);
        assertThat(Observation.of(List.of(without, at(9, stated(20, 3, 0, 1, 1))), List.of(HALF_STEPS)))
                .singleElement()
                .satisfies(one -> assertThat(one.steps()).containsExactly(0));
    }

    /** Equal precision: the mean, with half the variance; another setting stays apart. */
    @Test
    void repeatsAreAveraged() {
        List<Observation> settings = Observation.of(
                List.of(
                        at(10, stated(20, 3, 0, -25, 7)),
                        at(9, stated(20, 3, 0, 30, 1)),
                        at(10, stated(20, 3, 0, -15, 3))),
                List.of(HALF_STEPS));
        assertThat(settings).hasSize(2);
        assertThat(settings.get(0).centrePercent()).isCloseTo(-20, within(1e-12));
        assertThat(settings.get(0).centreVariance()).isCloseTo(0.5, within(1e-12));
        assertThat(settings.get(0).quarterPercent()).isCloseTo(5, within(1e-12));
        assertThat(settings.get(0).quarterVariance()).isCloseTo(0.5, within(1e-12));
        assertThat(settings.get(1).centrePercent()).isEqualTo(30);
    }

    /** The same to a hundredth of a step, half a step is 0.5 on the scale. */
    @ParameterizedTest
    @CsvSource({"10.002, 1", "9.998, 1", "10.003, 2", "9.997, 2"})
    void settingsThatNobodyTellsApartAreOne(double setting, int settings) {
        assertThat(Observation.of(
                        List.of(at(setting, stated(20, 3, 0, 1, 1)), at(10, stated(20, 3, 0, 1, 1))),
                        List.of(HALF_STEPS)))
                .hasSize(settings);
    }

    /** Exact trays still have the least noise. */
    @Test
    void noAmplitudeIsKnownExactly() {
        assertThat(Observation.of(List.of(at(10, TestFields.shaped(0.01, 0, 10, 0))), List.of(HALF_STEPS))
                        .get(0)
                        .centreVariance())
                .isEqualTo(0.25);
    }
}
