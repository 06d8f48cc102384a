package org.evenfall.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values made up for the purpose. */
class HeightCalculatorTest {

    private static HeightResult assess(
            @Nullable Double left, @Nullable Double right, @Nullable Double front, @Nullable Double rear) {
        return HeightCalculator.assess(new HeightCalculator.Measured(
                List.of(0.30, 0.36, 0.30), 0.10, 0.75, left, right, front, rear, -0.05, 0.3, new Interval(0.1, 0.5)));
    }

    @Test
    void aboveTheCropCanopyWithHalfTheGrowth() {
        HeightResult result = assess(1.02, 1.04, null, null);
        assertThat(result.crop().meanM()).isCloseTo(0.32, within(1e-9));
        assertThat(result.crop().spreadM()).isCloseTo(0.06, within(1e-9));
        assertThat(result.crop().laterM()).isCloseTo(0.37, within(1e-9));
        assertThat(result.wantedOverCropM()).isEqualTo(0.75);
        assertThat(result.overGroundM()).isCloseTo(1.12, within(1e-9));
        assertThat(result.chainM()).isCloseTo(0.70, within(1e-9));
        assertThat(result.throwPer10CmM()).isEqualTo(0.3);
    }

    @Test
    void heightNowIsTheMeanOfLeftAndRight() {
        HeightResult.Now now = assess(1.02, 1.04, 0.9, 0.8).now();
        assertThat(now.leftRightM()).isCloseTo(-0.02, within(1e-9));
        assertThat(now.foreAftM()).isCloseTo(0.1, within(1e-9));
        assertThat(now.overCropM()).isCloseTo(1.03 - 0.32, within(1e-9));
        assertThat(now.correctionM()).isCloseTo(0.09, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "1.02, , , , 1.02",
        ", 1.04, , , 1.04",
        ", , 0.9, 0.8, 0.85",
        ", , 0.9, , 0.9",
        ", , , 0.8, 0.8",
        "1.02, , 0.9, 0.8, 1.02"
    })
    void oneSideCountsForBothElseFrontAndRear(
            @Nullable Double left, @Nullable Double right, @Nullable Double front, @Nullable Double rear, double now) {
        HeightResult.Now found = assess(left, right, front, rear).now();
        assertThat(found.overCropM()).isCloseTo(now - 0.32, within(1e-9));
        assertThat(found.correctionM()).isCloseTo(1.12 - now, within(1e-9));
        assertThat(found.leftRightM()).isNull();
        assertThat(found.foreAftM() == null).isEqualTo(front == null || rear == null);
    }

    @Test
    void nothingMeasuredNowGivesNoCorrection() {
        assertThat(assess(null, null, null, null).now()).isEqualTo(new HeightResult.Now(null, null, null, null));
    }

    @ParameterizedTest
    @CsvSource({"-0.76, 0", "-0.75, 0", "-0.74, 0.01", "0, 0.75", "0.1, 0.85"})
    void theChainIsNeverShorterThanNothing(double pointM, double chainM) {
        HeightResult result = HeightCalculator.assess(
                new HeightCalculator.Measured(List.of(0.3), 0, 0.75, null, null, null, null, pointM, null, null));
        assertThat(result.chainM()).isCloseTo(chainM, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, growthM", "-0.01, 0.75, growthM", "NaN, 0.75, growthM", "0, NaN, wantedOverCropM"})
    void refusesTheImpossible(double growthM, double wantedM, String name) {
        assertThatThrownBy(() -> new HeightCalculator.Measured(
                        List.of(0.3), growthM, wantedM, null, null, null, null, 0, null, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(name);
        assertThatThrownBy(
                        () -> new HeightCalculator.Measured(List.of(), 0, 0.75, null, null, null, null, 0, null, null))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
