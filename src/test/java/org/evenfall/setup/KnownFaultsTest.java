package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fault typed into the demo, whose first test is uneven and whose second is even: the cause before a lever. */
class KnownFaultsTest {

    private static TypedSetup changed(TypedSetup typed, UnaryOperator<TypedSetup> change) {
        return change.apply(typed);
    }

    /** The demo with its uneven test alone. */
    private static TypedSetup misSet() {
        TypedSetup demo = TypedSetup.demo();
        List<TrayTestEntry> tests = TrayPaths.TESTS.get(demo.setup());
        return demo.choose(TrayPaths.TESTS, tests.subList(0, 1));
    }

    private static TypedSetup answer(TypedSetup typed, CheckItem item, CheckAnswer answer) {
        List<CheckEntry> checks = new ArrayList<>(MachineCheckPaths.CHECKS.get(typed.setup()));
        checks.replaceAll(check -> check.item() == item ? check.withAnswer(answer) : check);
        return typed.choose(MachineCheckPaths.CHECKS, checks);
    }

    private static Arguments fault(
            String what, AdviceKind kind, AdviceReason.Kind evidence, UnaryOperator<TypedSetup> change) {
        return Arguments.of(what, kind, evidence, change);
    }

    static Stream<Arguments> faults() {
        EntryPath<VaneEntry> vane = MachineCheckPaths.VANES.item(2);
        return Stream.of(
                fault(
                        "vane",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.VANE_WORN,
                        typed -> typed.type(MachineCheckPaths.VANE_LENGTH, vane, "318 mm")),
                fault(
                        "vane failed",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.VANE_FAILED,
                        typed -> new TypedSetup(MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED
                                .at(vane)
                                .set(typed.setup(), CheckAnswer.FAILED))),
                fault(
                        "guards",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.PART_FAILED,
                        typed -> answer(typed, CheckItem.GUARDS, CheckAnswer.FAILED)),
                fault(
                        "discs",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.PART_FAILED,
                        typed -> answer(typed, CheckItem.DISCS, CheckAnswer.FAILED)),
                fault(
                        "tilt",
                        AdviceKind.LEVEL_HEIGHT_TYRES,
                        AdviceReason.Kind.PART_FAILED,
                        typed -> answer(typed, CheckItem.TILT, CheckAnswer.FAILED)),
                fault(
                        "level",
                        AdviceKind.LEVEL_HEIGHT_TYRES,
                        AdviceReason.Kind.LEVEL_OFF,
                        typed -> typed.type(MachineCheckPaths.HEIGHT_LEFT, "88.5 cm")),
                fault(
                        "tyres",
                        AdviceKind.LEVEL_HEIGHT_TYRES,
                        AdviceReason.Kind.TYRES_OFF,
                        typed -> typed.type(MachineCheckPaths.TYRE_LEFT, "1.9 bar")),
                fault(
                        "PTO",
                        AdviceKind.PTO_SPEED,
                        AdviceReason.Kind.PTO_OFF,
                        typed -> typed.type(MachineCheckPaths.PTO_MEASURED, "480 rpm")),
                fault(
                        "bucket",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.OUTLETS_UNEQUAL,
                        typed -> typed.type(
                                RatePaths.BUCKET_LEFT, RatePaths.BUCKET_TESTS.item(2), "14.6 kg", "14.5 kg")),
                fault(
                        "damp",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.PRODUCT_DAMP,
                        typed -> typed.choose(ProductPaths.CONDITION, Condition.SLIGHTLY_DAMP)),
                fault(
                        "caked",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.PRODUCT_CAKED,
                        typed -> typed.choose(ProductPaths.CONDITION, Condition.CAKED)));
    }

    static Stream<Arguments> unseen() {
        return Stream.of(
                fault(
                        "no vanes",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.VANES_UNSEEN,
                        typed -> typed.choose(MachineCheckPaths.VANES, List.of())),
                fault(
                        "no guards",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.GUARDS_UNSEEN,
                        typed -> answer(typed, CheckItem.GUARDS, CheckAnswer.UNANSWERED)),
                fault(
                        "no PTO",
                        AdviceKind.PTO_SPEED,
                        AdviceReason.Kind.PTO_UNSEEN,
                        typed -> typed.type(MachineCheckPaths.PTO_MEASURED, "")),
                fault(
                        "no bucket",
                        AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.Kind.OUTLETS_UNSEEN,
                        typed -> typed.choose(RatePaths.BUCKET_TESTS, List.of())));
    }

    private static Advice advice(TypedSetup typed) {
        return Assessor.assess(typed.setup()).trays().advice();
    }

    private static List<AdviceReason.Kind> kinds(Advice advice) {
        return advice.reasons().stream().map(AdviceReason::kind).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void beforeALeverAndWithKeep(
            String what, AdviceKind kind, AdviceReason.Kind evidence, UnaryOperator<TypedSetup> change) {
        assertThat(advice(misSet()).kind()).isEqualTo(AdviceKind.MOVE_LEVER);
        Advice first = advice(changed(misSet(), change));
        assertThat(first.kind()).isEqualTo(kind);
        assertThat(kinds(first)).containsExactly(evidence, AdviceReason.Kind.MEND_FIRST);
        Advice even = advice(changed(TypedSetup.demo(), change));
        assertThat(even.kind()).isEqualTo(AdviceKind.KEEP);
        assertThat(kinds(even)).contains(evidence).endsWith(AdviceReason.Kind.MEND_ALL_THE_SAME);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("unseen")
    void whatWasNotLookedAt(
            String what, AdviceKind kind, AdviceReason.Kind evidence, UnaryOperator<TypedSetup> change) {
        Advice first = advice(changed(misSet(), change));
        assertThat(first.kind()).isEqualTo(kind);
        assertThat(kinds(first)).containsExactly(evidence, AdviceReason.Kind.LOOK_FIRST);
        assertThat(advice(changed(TypedSetup.demo(), change)).kind()).isEqualTo(AdviceKind.KEEP);
    }

    /** Every other part left open does not keep the lever back. */
    @ParameterizedTest
    @org.junit.jupiter.params.provider.EnumSource(
            value = CheckItem.class,
            names = "GUARDS",
            mode = org.junit.jupiter.params.provider.EnumSource.Mode.EXCLUDE)
    void anotherOpenPartCountsAsAsked(CheckItem item) {
        TypedSetup open = answer(misSet(), item, CheckAnswer.UNANSWERED)
                .type(MachineCheckPaths.HEIGHT_LEFT, "")
                .type(MachineCheckPaths.TYRE_LEFT, "");
        assertThat(advice(open).kind()).isEqualTo(AdviceKind.MOVE_LEVER);
    }

    /** Above the stop limit of 4 m/s the test proves nothing, whatever the trays show. */
    @ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource({"4 m/s, MOVE_LEVER", "4.1 m/s, WAIT_FOR_WIND"})
    void wind(String typed, AdviceKind kind) {
        TypedSetup windy = misSet().type(TrayPaths.TEST_WIND, TrayPaths.TESTS.item(0), typed);
        assertThat(advice(windy).kind()).isEqualTo(kind);
    }
}
