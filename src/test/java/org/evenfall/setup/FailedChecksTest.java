package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.path.MachineCheckPaths;
import org.junit.jupiter.api.Test;

/** The demo, whose machine has passed, with one thing of its check failed at a time. */
class FailedChecksTest {

    private static FailedChecks of(TypedSetup typed) {
        return FailedChecks.of(Assessor.assess(typed.setup()));
    }

    private static TypedSetup answer(TypedSetup typed, CheckItem item, CheckAnswer answer, String reason) {
        List<CheckEntry> checks = new ArrayList<>(MachineCheckPaths.CHECKS.get(typed.setup()));
        checks.replaceAll(
                check -> check.item() == item ? check.withAnswer(answer).withOverrideReason(reason) : check);
        return typed.choose(MachineCheckPaths.CHECKS, checks);
    }

    @Test
    void nothingFailedInTheDemo() {
        FailedChecks failed = of(TypedSetup.demo());
        assertThat(failed).isEqualTo(new FailedChecks(List.of(), false, false));
        assertThat(failed.any()).isFalse();
    }

    @Test
    void partsWithAReasonAndWithoutAreInTheOrderOfTheWalk() {
        TypedSetup typed = answer(TypedSetup.demo(), CheckItem.TYRES, CheckAnswer.FAILED, "");
        typed = answer(typed, CheckItem.DISCS, CheckAnswer.FAILED, "new ones are ordered");
        FailedChecks failed = of(typed);
        assertThat(failed.parts())
                .containsExactlyInAnyOrder(CheckItem.DISCS, CheckItem.TYRES)
                .isSorted();
        assertThat(failed.any()).isTrue();
        assertThat(failed.vane()).isFalse();
        assertThat(failed.measured()).isFalse();
    }

    @Test
    void aWornVane() {
        FailedChecks failed =
                of(TypedSetup.demo().type(MachineCheckPaths.VANE_LENGTH, MachineCheckPaths.VANES.item(2), "318 mm"));
        assertThat(failed).isEqualTo(new FailedChecks(List.of(), true, false));
        assertThat(failed.any()).isTrue();
    }

    @Test
    void aSpeedOfTheShaftThatIsOffWithAReasonOrWithout() {
        TypedSetup slow = TypedSetup.demo().type(MachineCheckPaths.PTO_MEASURED, "490 rpm");
        assertThat(of(slow)).isEqualTo(new FailedChecks(List.of(), false, true));
        assertThat(of(slow.choose(MachineCheckPaths.LEVEL_OVERRIDE_REASON, "the gauge reads low")))
                .isEqualTo(new FailedChecks(List.of(), false, true));
        assertThat(of(slow).any()).isTrue();
    }
}
