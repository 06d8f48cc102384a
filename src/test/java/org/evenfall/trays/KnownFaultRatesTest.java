package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Widening;
import org.evenfall.trays.LobeMachine.Fault;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Known faults and spoilt trays on simulated machines, well set and mis-set: never a lever; seeded. */
@Tag("slow")
class KnownFaultRatesTest {

    private static final int MACHINES = 100;

    private static Advice advise(LobeMachine machine, MachineOrder order, TrayCatches test, Double windMPerS) {
        return Advisor.advise(new AdviceInput(
                List.of(new AdviceInput.DoneTest(
                        UniformityCalculator.of(test), Map.of(TestFields.LEVER, 10.0), windMPerS)),
                new LeverRules(List.of(TestFields.lever(Widening.HIGHER)), false),
                order,
                machine.tramlines(),
                WindLimits.USUAL));
    }

    /** The kind of the fault in all tests that are not even, KEEP with the fault as a reason in all that are. */
    @ParameterizedTest
    @MethodSource("org.evenfall.trays.AdvisorTest#faults")
    void aKnownFaultInAllCases(KnownFault fault) {
        MachineOrder order = new MachineOrder(true, true, true, List.of(fault), 0);
        int even = 0;
        for (int i = 0; i < 2 * MACHINES; i++) {
            LobeMachine machine = LobeMachine.draw(i, i % 2 == 0, Fault.NONE, DrivingPattern.BACK_AND_FORTH);
            TrayCatches test = machine.test(7, 555 + i);
            boolean keep = UniformityCalculator.of(test).verdict() == EvennessVerdict.EVEN;
            even += keep ? 1 : 0;
            Advice advice = advise(machine, order, test, 1.0);
            assertThat(advice.kind()).isEqualTo(keep ? AdviceKind.KEEP : fault.kind());
            assertThat(advice.reasons()).contains(fault.evidence());
        }
        assertThat(even).isBetween(MACHINES / 2, 3 * MACHINES / 2);
    }

    @Test
    void tooMuchWindInAllCases() {
        for (int i = 0; i < MACHINES; i++) {
            LobeMachine machine = LobeMachine.draw(i, i % 2 == 0, Fault.NONE, DrivingPattern.BACK_AND_FORTH);
            assertThat(advise(machine, MachineOrder.IN_ORDER, machine.test(7, i), 5.0)
                            .kind())
                    .isEqualTo(AdviceKind.WAIT_FOR_WIND);
        }
    }

    /** A tray typed as 0 on a well set machine: at most so many levers are turned, %. */
    @ParameterizedTest
    @CsvSource({"7, 3", "11, 2"})
    void aTrayTypedAsZeroTurnsNoLever(int trays, double mostPercent) {
        int moves = 0;
        int asked = 0;
        for (int i = 0; i < MACHINES; i++) {
            LobeMachine machine = LobeMachine.draw(i, false, Fault.NONE, DrivingPattern.BACK_AND_FORTH);
            TrayCatches good = machine.test(trays, 999 + i);
            List<Double> grams = new ArrayList<>(good.catchesG());
            grams.set(i % trays, 0.0);
            TrayCatches spoilt = new TrayCatches(
                    good.positionsM(),
                    grams,
                    good.tramlineWidthM(),
                    good.pattern(),
                    good.trayAreaM2(),
                    1,
                    good.meanGranuleG(),
                    good.readingStepG());
            Advice advice = advise(machine, MachineOrder.IN_ORDER, spoilt, 1.0);
            moves += advice.kind() == AdviceKind.MOVE_LEVER ? 1 : 0;
            asked += advice.leaveBlank().equals(List.of(i % trays + 1)) ? 1 : 0;
        }
        assertThat(100.0 * moves / MACHINES).isLessThanOrEqualTo(mostPercent);
        assertThat(100.0 * asked / MACHINES).isGreaterThan(90);
    }

    /** A badly worn vane that nobody knows of: the vanes are asked for before a lever in most tests that are not even. */
    @ParameterizedTest
    @CsvSource({"false, 75", "true, 70"})
    void anUnknownWornVane(boolean misSet, double leastPercent) {
        int uneven = 0;
        int asked = 0;
        for (int i = 0; i < MACHINES; i++) {
            LobeMachine machine = LobeMachine.draw(i, misSet, Fault.BADLY_WORN_VANE, DrivingPattern.BACK_AND_FORTH);
            TrayCatches test = machine.test(7, 999 + i);
            if (UniformityCalculator.of(test).verdict() != EvennessVerdict.EVEN) {
                uneven++;
                asked += advise(machine, MachineOrder.IN_ORDER, test, 1.0).kind() == AdviceKind.OUTLETS_AND_VANES
                        ? 1
                        : 0;
            }
        }
        assertThat(100.0 * asked / uneven).isGreaterThan(leastPercent);
    }
}
