package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.RateSetting;
import org.evenfall.machine.Widening;
import org.evenfall.setup.entry.FlowTableBasis;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The machine as its owner describes it. */
class MachineAssessorTest {

    private static MachineProfile machine(Entered entered) {
        return MachineAssessor.assess(entered.read()).present();
    }

    private static List<String> findings(Entered entered) {
        return lines(MachineAssessor.assess(entered.read()).findings());
    }

    private static Entered lever(Entered entered, int index, String label, String low, String high, String step) {
        var at = MachinePaths.LEVERS.item(index);
        return entered.with(MachinePaths.LEVER_LABEL, at, label)
                .with(MachinePaths.LEVER_LOWEST, at, low)
                .with(MachinePaths.LEVER_HIGHEST, at, high)
                .with(MachinePaths.LEVER_STEP, at, step);
    }

    private static Entered opening(Entered entered, int index, String opening, String flow) {
        var at = MachinePaths.OPENINGS.item(index);
        return entered.with(MachinePaths.OPENING_OPENING, at, opening).with(MachinePaths.OPENING_FLOW, at, flow);
    }

    private static Entered widths(String tramline, String... widths) {
        return Entered.inEmpty().with(StartPaths.TRAMLINE_WIDTH, tramline).withAll(MachinePaths.WORKING_WIDTHS, widths);
    }

    @Test
    void everyEntryIsInItsOwnPlace() {
        Entered entered = Entered.inEmpty()
                .with(MachinePaths.NAME, "Machine of the east barn")
                .withAll(MachinePaths.WORKING_WIDTHS, "24 m", "", "28 m")
                .with(MachinePaths.DISC_DIAMETER, "0.82 m")
                .with(MachinePaths.DISC_SPEED_AT540, "870 rpm")
                .with(MachinePaths.PTO_LOWEST, "480 rpm")
                .with(MachinePaths.PTO_HIGHEST, "600 rpm")
                .with(MachinePaths.OUTLETS, "3")
                .with(MachinePaths.WANTED_HEIGHT, "0.74 m")
                .with(MachinePaths.FLOW_TABLE_DENSITY, "0.98 kg/L")
                .with(MachinePaths.FLOW_TABLE_BASIS, FlowTableBasis.ONE_OUTLET);
        entered = lever(entered, 0, "long vane", "10", "40", "0.5")
                .with(MachinePaths.LEVER_UNIT, MachinePaths.LEVERS.item(0), "°")
                .with(MachinePaths.LEVER_WIDER_WHEN, MachinePaths.LEVERS.item(0), Widening.LOWER);
        entered = opening(entered, 0, "12", "20 kg/min");
        entered = opening(entered, 1, "18", "35 kg/min");
        // three outlets, flows of one: 3 × 20 = 60, 3 × 35 = 105 kg/min
        assertThat(machine(entered))
                .isEqualTo(new MachineProfile(
                        "Machine of the east barn",
                        List.of(24.0, 28.0),
                        0.41,
                        870.0,
                        480.0,
                        600.0,
                        3,
                        0.74,
                        List.of(new Lever("long vane", "°", 10, 40, 0.5, Widening.LOWER)),
                        List.of(new FlowPoint(12, 60), new FlowPoint(18, 105)),
                        0.98));
        assertThat(findings(entered)).isEmpty();
    }

    @Test
    void aMachineOfWhichNothingIsTypedHasTwoOutlets() {
        assertThat(machine(Entered.inEmpty()))
                .isEqualTo(
                        new MachineProfile("", List.of(), null, null, null, null, 2, null, List.of(), List.of(), null));
        assertThat(findings(Entered.inEmpty())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "UNANSWERED, UNANSWERED, false",
        "OPENING, UNANSWERED, false",
        "FACTOR, UNANSWERED, true",
        "WEIGHING, UNANSWERED, true",
        "FACTOR, SHOWN_OVER_CAUGHT, false",
        "WEIGHING, CAUGHT_OVER_SHOWN, false"
    })
    void aFactorNeedsTheRuleOfItsHandbook(RateSetting setting, FactorRule rule, boolean missing) {
        Entered entered =
                Entered.inEmpty().with(MachinePaths.RATE_SETTING, setting).with(MachinePaths.FACTOR_RULE, rule);
        assertThat(machine(entered).rateSetting()).isEqualTo(setting);
        assertThat(machine(entered).factorRule()).isEqualTo(rule);
        assertThat(findings(entered))
                .isEqualTo(missing ? List.of("MISSING START missing.factorRule /machine/factorRule []") : List.of());
    }

    /** 28 m less 0.5 m of rounding: widths below 27.5 m are short. */
    @ParameterizedTest
    @CsvSource({"27.4, true", "27.5, false", "27.6, false", "30, false"})
    void tramlinesWiderThanTheWidestWidthAreReported(String widest, boolean reported) {
        List<String> found = findings(widths("28 m", "21 m", widest + " m"));
        assertThat(found)
                .isEqualTo(
                        reported
                                ? List.of("WARNING START start.widthBeyondHandbook /machine/workingWidths [28 m]")
                                : List.of());
    }

    @Test
    void withoutWidthsOrTramlinesNothingIsCompared() {
        assertThat(findings(widths("28 m"))).isEmpty();
        assertThat(findings(widths("", "12 m"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"541, 540, true", "540, 540, false", "480, 540, false", "'', 540, false", "600, '', false"})
    void thePtoLimitsMustNotCross(String low, String high, boolean reported) {
        Entered entered = Entered.inEmpty().with(MachinePaths.PTO_LOWEST, low).with(MachinePaths.PTO_HIGHEST, high);
        assertThat(findings(entered))
                .isEqualTo(reported ? List.of("STOP START start.ptoLimits /machine/ptoLowest []") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"' ', 0, 20, 1", "b, '', 20, 1", "b, 0, '', 1", "b, 0, 20, ''"})
    void aLeverWithAnOpenEntryIsLeftOut(String label, String low, String high, String step) {
        Entered entered = lever(lever(Entered.inEmpty(), 0, "a", "-5", "20", "2"), 1, label, low, high, step);
        assertThat(findings(entered)).containsExactly("NOTE START start.leverOpen /machine/levers/1 [2:0]");
        assertThat(machine(entered).levers()).containsExactly(new Lever("a", "", -5, 20, 2, Widening.UNANSWERED));
    }

    /** The last two: 0.3 − 0.2 is a little less than 0.1 in binary numbers, 0.8 − 0.7 a little more. */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 1, true",
        "6, 5, 1, true",
        "5, 6, 1, false",
        "0, 20, 20, false",
        "0, 20, 20.1, true",
        "0, 20, 19.9, false",
        "0.2, 0.3, 0.1, false",
        "0.7, 0.8, 0.1, false"
    })
    void aLeverNeedsAScaleOfOneStepAtLeast(String low, String high, String step, boolean reported) {
        Entered entered = lever(Entered.inEmpty(), 0, "a", low, high, step);
        assertThat(findings(entered))
                .isEqualTo(reported ? List.of("STOP START start.leverLimits /machine/levers/0 [a]") : List.of());
        assertThat(machine(entered).levers()).hasSize(reported ? 0 : 1);
    }

    @Test
    void twoLeversMustNotHaveOneLabel() {
        Entered entered =
                lever(lever(Entered.inEmpty(), 0, "long vane", "0", "9", "1"), 1, " LONG vane", "0", "8", "1");
        assertThat(findings(entered))
                .containsExactly("STOP START start.leverTwice /machine/levers/1/label [ LONG vane]");
        assertThat(machine(entered).levers()).extracting(Lever::highest).containsExactly(9.0);
    }

    @Test
    void aLabelOfALeverThatIsLeftOutIsFree() {
        Entered entered = lever(lever(Entered.inEmpty(), 0, "a", "9", "0", "1"), 1, "a", "0", "8", "1");
        assertThat(findings(entered)).containsExactly("STOP START start.leverLimits /machine/levers/0 [a]");
        assertThat(machine(entered).levers()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(FlowTableBasis.class)
    void theFlowsCountAsTheTableSays(FlowTableBasis basis) {
        Entered entered = Entered.inEmpty().with(MachinePaths.OUTLETS, "4").with(MachinePaths.FLOW_TABLE_BASIS, basis);
        assertThat(findings(entered)).isEmpty();
        Entered one = opening(entered, 0, "12", "20 kg/min");
        // four outlets: 4 × 20 = 80 kg/min where the table counts one
        double flow = basis == FlowTableBasis.ONE_OUTLET ? 80 : 20;
        assertThat(machine(one).openings()).containsExactly(new FlowPoint(12, flow));
        assertThat(findings(one))
                .isEqualTo(
                        basis == FlowTableBasis.UNANSWERED
                                ? List.of("NOTE START start.flowBasis /machine/flowTableBasis []")
                                : List.of());
    }

    @ParameterizedTest
    @CsvSource({"18, 35, false", "18, 20, true", "18, 19, true", "12, 35, true", "11, 35, true"})
    void openingsAndFlowsMustRise(String opening, String flow, boolean reported) {
        Entered entered = opening(opening(Entered.inEmpty(), 0, "12", "20 kg/min"), 1, opening, flow + " kg/min");
        assertThat(findings(entered))
                .containsExactly(
                        reported
                                ? "STOP START start.openingsOrder /machine/openings []"
                                : "NOTE START start.flowBasis /machine/flowTableBasis []");
        assertThat(machine(entered).openings()).hasSize(reported ? 0 : 2);
    }

    @Test
    void aRowThatIsHalfTypedIsLeftOut() {
        Entered entered = opening(opening(Entered.inEmpty(), 0, "12", ""), 1, "", "35 kg/min");
        assertThat(machine(opening(entered, 2, "24", "50 kg/min")).openings()).containsExactly(new FlowPoint(24, 50));
    }
}
