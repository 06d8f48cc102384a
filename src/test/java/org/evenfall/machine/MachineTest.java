package org.evenfall.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MachineTest {

    private static final Lever LEVER = new Lever("long vane", "", 10, 14, 0.5, Widening.LOWER);

    @Test
    void aLeverMovesInWholeStepsAndStopsAtItsEnds() {
        assertThat(LEVER.stepsUp(13)).isEqualTo(2);
        assertThat(LEVER.stepsDown(10.2)).isZero();
        assertThat(LEVER.moved(13, 5)).isEqualTo(14);
        assertThat(LEVER.moved(11, -1)).isEqualTo(10.5);
        assertThat(LEVER.widerSign()).isEqualTo(-1);
        assertThatThrownBy(() -> new Lever("x", "", 5, 5, 1, Widening.HIGHER))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anOpeningTableIsItsOwnInverseAndEndsWhereItEnds() {
        OpeningTable table =
                new OpeningTable(List.of(new FlowPoint(10, 30), new FlowPoint(20, 60), new FlowPoint(30, 100)));
        for (double opening = 10; opening <= 30; opening += 0.7) {
            assertThat(table.opening(table.flowKgPerMin(opening).orElseThrow()).orElseThrow())
                    .isCloseTo(opening, within(1e-9));
        }
        assertThat(table.opening(101)).isEmpty();
        assertThat(table.flowKgPerMin(9.9)).isEmpty();
        assertThat(OpeningTable.usable(List.of(new FlowPoint(10, 30), new FlowPoint(20, 29))))
                .isFalse();
    }

    private static MachineCheck.Found found(
            Map<CheckItem, CheckAnswer> answers, Set<CheckItem> reasons, double rightM) {
        return new MachineCheck.Found(
                List.of(new MachineCheck.MeasuredVane(Side.LEFT, "long", 0.330, 0.332, CheckAnswer.GOOD)),
                answers,
                reasons,
                false,
                false,
                0.80,
                rightM,
                1.6,
                1.6,
                540.0,
                540.0);
    }

    @Test
    void aMissingGuardIsNeverOverridden() {
        MachineCheckResult result = MachineCheck.assess(
                found(Map.of(CheckItem.GUARDS, CheckAnswer.FAILED), Set.of(CheckItem.GUARDS), 0.80), 900.0);
        assertThat(result.failed()).containsExactly(CheckItem.GUARDS);
        assertThat(result.blocksFieldTest()).isTrue();
    }

    @Test
    void aTypedReasonLetsOtherPartsPass() {
        Map<CheckItem, CheckAnswer> answers = Map.of(CheckItem.DISCS, CheckAnswer.FAILED);
        assertThat(MachineCheck.assess(found(answers, Set.of(), 0.80), 900.0).blocksFieldTest())
                .isTrue();
        MachineCheckResult passed = MachineCheck.assess(found(answers, Set.of(CheckItem.DISCS), 0.80), 900.0);
        assertThat(passed.blocksFieldTest()).isFalse();
        assertThat(passed.overridden()).containsExactly(CheckItem.DISCS);
        assertThat(passed.discRpm()).isCloseTo(900, within(1e-9));
    }

    @Test
    void outOfLevelStopsTheFieldTest() {
        assertThat(MachineCheck.assess(found(Map.of(), Set.of(), 0.78), 900.0).blocksFieldTest())
                .isFalse();
        assertThat(MachineCheck.assess(found(Map.of(), Set.of(), 0.76), 900.0).blocksFieldTest())
                .isTrue();
    }

    @Test
    void heightsOverTheCrop() {
        HeightResult result = HeightCalculator.assess(new HeightCalculator.Measured(
                List.of(0.30, 0.34, 0.32), 0.10, 0.75, 1.02, 1.04, null, null, -0.05, 0.3));
        assertThat(result.cropM()).isCloseTo(0.32, within(1e-9));
        assertThat(result.overGroundM()).isCloseTo(1.12, within(1e-9));
        assertThat(result.correctionM()).isCloseTo(0.09, within(1e-9));
        assertThat(result.nowOverCropM()).isCloseTo(0.71, within(1e-9));
        assertThat(result.leftRightM()).isCloseTo(-0.02, within(1e-9));
        assertThat(result.chainM()).isCloseTo(0.70, within(1e-9));
    }
}
