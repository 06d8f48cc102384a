package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
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

class TestsBySettingTest {

    private static TestsBySetting of(AdviceInput.DoneTest... tests) {
        return new TestsBySetting(new AdviceInput(
                List.of(tests),
                new LeverRules(List.of(TestFields.lever(Widening.HIGHER)), false),
                TestFields.IN_ORDER,
                TestFields.BACK_AND_FORTH,
                WindLimits.USUAL));
    }

    /** Clearly better is with a chance of four in five: with intervals from half to twice, 1.65 times better. */
    @ParameterizedTest
    @CsvSource({"11, true", "12.1, true", "12.13, false", "15, false", "25, false"})
    void anEarlierSettingIsClearlyBetterWithEightyPercent(double earlierCv, boolean better) {
        AdviceInput.DoneTest earlier = at(10, stated(earlierCv, 1, 0, 5, 0));
        AdviceInput.DoneTest last = at(11, stated(20, 1, 0, 5, 0));
        assertThat(of(earlier, last).clearlyBetterThan(last)).isEqualTo(better ? earlier : null);
    }

    @Test
    void theBestOfTheEarlierOnesIsTaken() {
        AdviceInput.DoneTest good = at(9, stated(12, 1, 0, 5, 0));
        AdviceInput.DoneTest best = at(10, stated(11, 1, 0, 5, 0));
        AdviceInput.DoneTest fair = at(11, stated(13, 1, 0, 5, 0));
        AdviceInput.DoneTest last = at(12, stated(20, 1, 0, 5, 0));
        assertThat(of(good, best, fair, last).clearlyBetterThan(last)).isEqualTo(best);
    }

    @Test
    void theSettingNowIsNoEarlierOne() {
        // other places, so that the two are not taken together
        AdviceInput.DoneTest before = at(10, TestFields.uniformity(10, 10, 10.5, 10, 10));
        AdviceInput.DoneTest last = at(10, TestFields.uniformity(TestFields.CENTRE_HEAVY));
        assertThat(of(before, last).clearlyBetterThan(last)).isNull();
    }

    @Test
    void repeatsNeedTheSameSettingsAndTheSamePlaces() {
        AdviceInput.DoneTest last = at(10, TestFields.uniformity(8, 9, 11, 13, 11, 9, 8));
        AdviceInput.DoneTest repeat = at(10, TestFields.uniformity(9, 9, 11, 12, 11, 9, 8));
        AdviceInput.DoneTest otherSetting = at(10.02, TestFields.uniformity(9, 9, 11, 12, 11, 9, 8));
        AdviceInput.DoneTest otherPlaces = at(10, TestFields.uniformity(9, 11, 12, 11, 8));
        TestsBySetting.Pool pool = of(repeat, otherSetting, otherPlaces, last).pool(last);
        assertThat(pool.tests()).isEqualTo(2);
        assertThat(pool.evenness())
                .isEqualTo(UniformityCalculator.pooled(
                        List.of(repeat.evenness(), last.evenness()), TestFields.BACK_AND_FORTH));
    }

    @ParameterizedTest
    @CsvSource({"10.019, true", "10.02, true", "10.021, false", "9.981, true", "9.979, false"})
    void settingsAreTheSameToAHundredthOfAStep(double setting, boolean same) {
        Lever lever = new Lever(LEVER, "", 0, 20, 2, Widening.HIGHER);
        assertThat(LeverSettings.same(List.of(lever), Map.of(LEVER, 10.0), Map.of(LEVER, setting)))
                .isEqualTo(same);
    }

    @Test
    void aLeverWithASettingInOneTestOnlyDiffers() {
        List<Lever> levers = List.of(TestFields.lever(Widening.HIGHER));
        assertThat(LeverSettings.same(levers, Map.of(LEVER, 10.0), Map.of())).isFalse();
        assertThat(LeverSettings.same(levers, Map.of(), Map.of(LEVER, 10.0))).isFalse();
        assertThat(LeverSettings.same(levers, Map.of(), Map.of("other", 1.0))).isTrue();
    }
}
