package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.TraysAssessorTest.IN_ORDER;
import static org.evenfall.setup.TraysAssessorTest.advice;
import static org.evenfall.setup.TraysAssessorTest.caught;
import static org.evenfall.setup.TraysAssessorTest.ground;
import static org.evenfall.setup.TraysAssessorTest.set;

import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.MachineOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the advice of step 6 is made from: tests, order of the machine and levers. */
class TraysAdviceTest {

    private static final TypedSetup POINTED = set(caught(ground(), 0, "60", "98", "150", "101", "58"), 0, "27", "4");

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

    /** Both levers have room for one step only, and the tests say that this is too little. */
    @Test
    void twoLeversAreMovedOnlyWhenTheOwnerAllowsIt() {
        TypedSetup first = set(caught(ground(), 0, "40", "88", "190", "92", "38"), 0, "38.5", "0.75");
        TypedSetup both = set(caught(first, 1, "60", "98", "150", "101", "58"), 1, "39.5", "0.25");
        assertThat(advice(both, IN_ORDER).moves()).hasSize(1);
        assertThat(advice(both.choose(TrayPaths.TWO_LEVERS, YesNo.NO), IN_ORDER).moves())
                .hasSize(1);
        assertThat(advice(both.choose(TrayPaths.TWO_LEVERS, YesNo.YES), IN_ORDER)
                        .moves())
                .hasSize(2);
    }
}
