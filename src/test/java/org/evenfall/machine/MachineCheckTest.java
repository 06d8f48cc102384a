package org.evenfall.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Values made up for the purpose; left and right differ everywhere. */
class MachineCheckTest {

    /** What was found, all in order until changed. */
    private static final class Finds {
        List<MachineCheck.MeasuredVane> vanes = List.of();
        Map<CheckItem, CheckAnswer> answers = Map.of();
        Set<CheckItem> withReason = Set.of();
        boolean vanesOverridden;
        boolean levelOverridden;

        @Nullable
        Double leftM = 0.80;

        @Nullable
        Double rightM = 0.79;

        @Nullable
        Double leftBar = 1.6;

        @Nullable
        Double rightBar = 1.7;

        @Nullable
        Double ptoRpm = 535.0;

        @Nullable
        Double wantedRpm = 540.0;

        MachineCheckResult assess() {
            return MachineCheck.assess(
                    new MachineCheck.Found(
                            vanes,
                            answers,
                            withReason,
                            vanesOverridden,
                            levelOverridden,
                            leftM,
                            rightM,
                            leftBar,
                            rightBar,
                            ptoRpm,
                            wantedRpm),
                    900.0);
        }
    }

    private static MachineCheck.MeasuredVane vane(@Nullable Double lengthM, @Nullable Double newM, CheckAnswer answer) {
        return new MachineCheck.MeasuredVane(Side.RIGHT, "long", lengthM, newM, answer);
    }

    @Test
    void inOrderBlocksNothing() {
        MachineCheckResult result = new Finds().assess();
        assertThat(result.blocksFieldTest()).isFalse();
        assertThat(result.levelDifferenceM()).isCloseTo(0.01, within(1e-12));
        assertThat(result.tyreDifferenceBar()).isCloseTo(-0.1, within(1e-12));
        assertThat(result.ptoRpm()).isEqualTo(535);
        assertThat(result.discRpm()).isCloseTo(900 * 535 / 540.0, within(1e-9));
        assertThat(result.unanswered()).containsExactly(CheckItem.values());
    }

    @ParameterizedTest
    @CsvSource({
        "0.821, 0.80, true", "0.82, 0.80, false", "0.819, 0.80, false",
        "0.80, 0.821, true", "0.80, 0.82, false", "0.80, , false"
    })
    void levelWithinTwoCentimetres(double leftM, @Nullable Double rightM, boolean blocks) {
        Finds finds = new Finds();
        finds.leftM = leftM;
        finds.rightM = rightM;
        assertThat(finds.assess().blocksFieldTest()).isEqualTo(blocks);
        finds.levelOverridden = true;
        assertThat(finds.assess().blocksFieldTest()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"1.79, 1.6, false", "1.8, 1.6, false", "1.81, 1.6, true", "1.6, 1.81, true", "1.6, 1.8, false"})
    void tyresWithinATenthAndAnother(double leftBar, double rightBar, boolean blocks) {
        Finds finds = new Finds();
        finds.leftBar = leftBar;
        finds.rightBar = rightBar;
        assertThat(finds.assess().blocksFieldTest()).isEqualTo(blocks);
        finds.levelOverridden = true;
        assertThat(finds.assess().blocksFieldTest()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "969, 1000, true",
        "970, 1000, false",
        "971, 1000, false",
        "1029, 1000, false",
        "1030, 1000, false",
        "1031, 1000, true",
        "420, 540, true",
        "420, , false"
    })
    void ptoSpeedWithinThreePercent(double rpm, @Nullable Double wantedRpm, boolean blocks) {
        Finds finds = new Finds();
        finds.ptoRpm = rpm;
        finds.wantedRpm = wantedRpm;
        assertThat(finds.assess().blocksFieldTest()).isEqualTo(blocks);
        finds.levelOverridden = true;
        assertThat(finds.assess().blocksFieldTest()).isFalse();
    }

    @Test
    void ptoDeviationNeedsBothSpeeds() {
        assertThat(MachineCheck.ptoDeviationPercent(530.0, 540.0)).isCloseTo(-100 / 54.0, within(1e-9));
        assertThat(MachineCheck.ptoDeviationPercent(null, 540.0)).isNull();
        assertThat(MachineCheck.ptoDeviationPercent(530.0, null)).isNull();
    }

    @Test
    void theDiscSpeedNeedsPtoAndHandbook() {
        Finds finds = new Finds();
        finds.ptoRpm = null;
        assertThat(finds.assess().discRpm()).isNull();
        MachineCheck.Found found = new MachineCheck.Found(
                List.of(), Map.of(), Set.of(), false, false, null, null, null, null, 530.0, null);
        MachineCheckResult result = MachineCheck.assess(found, null);
        assertThat(result.discRpm()).isNull();
        assertThat(result.levelDifferenceM()).isNull();
        assertThat(result.tyreDifferenceBar()).isNull();
        assertThat(result.blocksFieldTest()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "0.3271, 0.332, GOOD, false",
        "0.327, 0.332, GOOD, false",
        "0.3269, 0.332, GOOD, true",
        "0.332, 0.332, FAILED, true",
        "0.334, 0.332, GOOD, false",
        ", 0.332, GOOD, false",
        "0.2, , GOOD, false",
        ", , FAILED, true"
    })
    void aVaneMayWearByFiveMillimetres(
            @Nullable Double lengthM, @Nullable Double newM, CheckAnswer answer, boolean failed) {
        Finds finds = new Finds();
        finds.vanes = List.of(vane(0.330, 0.332, CheckAnswer.GOOD), vane(lengthM, newM, answer));
        MachineCheckResult result = finds.assess();
        assertThat(result.vanes().get(1).failed()).isEqualTo(failed);
        assertThat(result.blocksFieldTest()).isEqualTo(failed);
        finds.vanesOverridden = true;
        assertThat(finds.assess().blocksFieldTest()).isFalse();
    }

    @Test
    void wearIsNewLessMeasured() {
        Finds finds = new Finds();
        finds.vanes = List.of(vane(0.330, 0.332, CheckAnswer.GOOD), vane(null, 0.332, CheckAnswer.GOOD));
        VaneCheck check = finds.assess().vanes().get(0);
        assertThat(check.side()).isEqualTo(Side.RIGHT);
        assertThat(check.label()).isEqualTo("long");
        assertThat(check.wearM()).isCloseTo(0.002, within(1e-12));
        assertThat(check.wearPercent()).isCloseTo(100 * 0.002 / 0.332, within(1e-9));
        assertThat(finds.assess().vanes().get(1).wearM()).isNull();
        assertThat(finds.assess().vanes().get(1).wearPercent()).isNull();
    }

    /** The agitator affects only the flow; a missing guard is never overridden: it can maim. */
    @ParameterizedTest
    @EnumSource(CheckItem.class)
    void aFailedItemBlocksUnlessOverriddenWithAReason(CheckItem item) {
        Finds finds = new Finds();
        finds.answers = Map.of(item, CheckAnswer.FAILED);
        MachineCheckResult failed = finds.assess();
        assertThat(failed.failed()).containsExactly(item);
        assertThat(failed.overridden()).isEmpty();
        assertThat(failed.unanswered()).hasSize(CheckItem.values().length - 1).doesNotContain(item);
        assertThat(failed.blocksFieldTest())
                .isEqualTo(MachineCheck.spoilPattern().contains(item));
        finds.withReason = Set.of(item);
        MachineCheckResult overridden = finds.assess();
        boolean guards = item == CheckItem.GUARDS;
        assertThat(overridden.overridden()).hasSize(guards ? 0 : 1);
        assertThat(overridden.failed()).hasSize(guards ? 1 : 0);
        assertThat(overridden.blocksFieldTest()).isEqualTo(guards);
        assertThat(MachineCheck.mayBeOverridden(item)).isEqualTo(!guards);
    }

    @Test
    void goodAndNotFittedNeitherFailNorAreOpen() {
        Finds finds = new Finds();
        Map<CheckItem, CheckAnswer> answers = new EnumMap<>(CheckItem.class);
        for (CheckItem item : CheckItem.values()) {
            answers.put(item, item == CheckItem.AGITATOR ? CheckAnswer.NOT_FITTED : CheckAnswer.GOOD);
        }
        answers.put(CheckItem.TILT, CheckAnswer.UNANSWERED);
        finds.answers = answers;
        MachineCheckResult result = finds.assess();
        assertThat(result.failed()).isEmpty();
        assertThat(result.unanswered()).containsExactly(CheckItem.TILT);
        assertThat(result.blocksFieldTest()).isFalse();
    }
}
