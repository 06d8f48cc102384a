package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TraysAssessorTest.IN_ORDER;
import static org.evenfall.setup.TraysAssessorTest.MACHINE;
import static org.evenfall.setup.TraysAssessorTest.advice;
import static org.evenfall.setup.TraysAssessorTest.assess;
import static org.evenfall.setup.TraysAssessorTest.caught;
import static org.evenfall.setup.TraysAssessorTest.ground;
import static org.evenfall.setup.TraysAssessorTest.set;

import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.Advisor;
import org.evenfall.trays.LeverRules;
import org.evenfall.trays.MachineOrder;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.WindLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the advice of step 6 is made from: tests, order of the machineand levers. */
class TraysAdviceTest {

    private static final TypedSetup POINTED = set(caught(ground(), 0, "60", "98", "150", "101", "58"), 0, "27", "4");

    private static final ProductResult UNKNOWN = TypedSetup.product(null, null);

    /** Left gets more than twice of right: the machine is put in order before a lever is moved. */
    @ParameterizedTest
    @CsvSource({
        "false, true, true, LEVEL_HEIGHT_TYRES",
        "false, false, false, PTO_SPEED",
        "true, false, false, PTO_SPEED",
        "true, true, false, OUTLETS_AND_VANES",
        "true, true, true, OUTLETS_AND_VANES"
    })
    void oneSidedMeansTheMachineFirst(boolean level, boolean pto, boolean outlets, AdviceKind kind) {
        TypedSetup typed = set(caught(ground(), 0, "140", "120", "100", "80", "60"), 0, "27", "4");
        assertThat(advice(typed, new MachineOrder(level, pto, outlets)).kind()).isEqualTo(kind);
    }

    @Test
    void anEvenTestKeepsTheSettingsAndAPointedOneMovesALever() {
        TypedSetup even = set(caught(ground(), 0, "98", "101", "100", "102", "99"), 0, "27", "4");
        assertThat(advice(even, IN_ORDER).kind()).isEqualTo(AdviceKind.KEEP);
        Advice broad = advice(POINTED, IN_ORDER);
        assertThat(broad.kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        // too much in the middle: throw wider, with the first lever, upwards
        assertThat(broad.moves()).singleElement().satisfies(move -> {
            assertThat(move.lever()).isEqualTo("long vane");
            assertThat(move.to()).isGreaterThan(27);
        });
    }

    /** What the advisor says of the one test, with these levers. */
    private static Advice expected(boolean twoLevers) {
        // the granules also set the noise of the test
        var test = assess(POINTED, UNKNOWN, IN_ORDER).present().last();
        return Advisor.advise(
                new AdviceInput(
                        List.of(new AdviceInput.DoneTest(
                                test.evenness(), Map.of("long vane", 27.0, "drop point", 4.0), null)),
                        new LeverRules(MACHINE.levers(), twoLevers),
                        IN_ORDER,
                        new Tramlines(24, DrivingPattern.BACK_AND_FORTH),
                        WindLimits.USUAL));
    }

    @Test
    void twoLeversAreMovedOnlyWhenTheOwnerAllowsIt() {
        assertThat(advice(POINTED.choose(TrayPaths.TWO_LEVERS, YesNo.NO), IN_ORDER))
                .isEqualTo(expected(false));
        assertThat(advice(POINTED.choose(TrayPaths.TWO_LEVERS, YesNo.YES), IN_ORDER))
                .isEqualTo(expected(true))
                .isNotEqualTo(expected(false));
    }
}
