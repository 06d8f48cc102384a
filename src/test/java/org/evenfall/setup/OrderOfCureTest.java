package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.Side;
import org.evenfall.machine.VaneCheck;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.KnownFault;
import org.evenfall.trays.MachineOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as in order before a lever is moved: measured, and within its limit. */
class OrderOfCureTest {

    private static final RateResult NO_BUCKET = new RateResult(null, null, List.of(), null);

    private static MachineCheckResult check(Double levelM, Double tyreBar, Double ptoRpm, boolean... vanesFailed) {
        List<VaneCheck> vanes = new java.util.ArrayList<>();
        for (boolean failed : vanesFailed) {
            vanes.add(new VaneCheck(Side.RIGHT, "long", 0.002, 0.6, failed));
        }
        return new MachineCheckResult(vanes, List.of(), List.of(), List.of(), levelM, tyreBar, ptoRpm, null, false);
    }

    private static BucketResult bucket(Double leftRightPercent) {
        return new BucketResult(
                20,
                21.5,
                new BucketResult.Flow(15.0, 14.5, 29.5),
                150.0,
                1.0,
                new BucketResult.Agreement(1.0, leftRightPercent, 0.5, true, null, null),
                new BucketResult.Next(20.0, 21.5, null),
                null);
    }

    private static RateResult rate(BucketResult... tests) {
        return new RateResult(null, null, List.of(tests), null);
    }

    private static MachineOrder order(MachineProfile machine, MachineCheckResult check, RateResult rate, Double pto) {
        return OrderOfCure.of(TypedSetup.blank().read(), machine, check, rate, pto);
    }

    private static MachineProfile machine(int outlets) {
        return TypedSetup.machine(480.0, 580.0, outlets);
    }

    /** Level within 2 cm and measured; tyres within 0.2 bar where they were measured. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0, 0, true",
                "-, -, false",
                "-, 0, false",
                "0.02, -, true",
                "-0.02, -, true",
                "0.0201, -, false",
                "-0.0201, -, false",
                "0.05, 0.1, false",
                "0.019, 0.2, true",
                "0.019, -0.2, true",
                "0.019, 0.201, false",
                "0.019, -0.201, false"
            })
    void levelAndTyres(Double levelM, Double tyreBar, boolean inOrder) {
        MachineOrder order = order(machine(2), check(levelM, tyreBar, 540.0), rate(bucket(1.0)), 540.0);
        assertThat(order.level()).isEqualTo(inOrder);
        assertThat(order.pto()).isTrue();
        assertThat(order.outlets()).isTrue();
    }

    /** 3 % of 540 rpm are 16.2; the handbook allows what the last two columns say. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "538, 540, 480, 580, true",
                "420, 540, 480, 580, false",
                "420, 540, -, -, false",
                "-, 540, 480, 580, false",
                "-, -, -, -, false",
                "523.8, 540, 480, 580, true",
                "523.7, 540, 480, 580, false",
                "556.2, 540, 480, 580, true",
                "556.3, 540, 480, 580, false",
                "540, -, 480, 580, true",
                "480, -, 480, 580, false",
                "523.8, -, -, -, true",
                "523.7, -, -, -, false",
                "1000, -, 950, 1050, true",
                "940, -, 950, 1050, false",
                "479.9, -, 480, 580, false",
                "580, -, 480, 580, false",
                "580.1, -, 480, 580, false",
                "530, 540, 535, 580, false",
                "550, 540, 480, 545, false",
                "420, -, -, -, false"
            })
    void shaftSpeed(Double measured, Double wanted, Double lowest, Double highest, boolean inOrder) {
        MachineOrder order =
                order(TypedSetup.machine(lowest, highest, 2), check(0.01, 0.1, measured), rate(bucket(1.0)), wanted);
        assertThat(order.pto()).isEqualTo(inOrder);
        assertThat(order.level()).isTrue();
        assertThat(order.outlets()).isTrue();
    }

    /** Left and right within 5 % in the last bucket test; one outlet has no other to differ from. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "2, 5, true",
                "2, -5, true",
                "2, 5.01, false",
                "2, -5.01, false",
                "2, -, false",
                "1, -, true",
                "1, 59, true",
                "4, 59, false"
            })
    void outlets(int outlets, Double leftRightPercent, boolean inOrder) {
        MachineOrder order =
                order(machine(outlets), check(0.01, 0.1, 540.0, false), rate(bucket(leftRightPercent)), 540.0);
        assertThat(order.outlets()).isEqualTo(inOrder);
        assertThat(order.level()).isTrue();
        assertThat(order.pto()).isTrue();
    }

    @Test
    void withoutABucketTestTheOutletsAreNotInOrder() {
        assertThat(order(machine(2), check(0.01, null, 540.0), NO_BUCKET, null).outlets())
                .isFalse();
        assertThat(order(machine(1), check(0.01, null, 540.0), NO_BUCKET, null).outlets())
                .isFalse();
    }

    @Test
    void theLastBucketTestCounts() {
        assertThat(order(machine(2), check(0.0, null, 540.0), rate(bucket(9.0), bucket(2.0)), null)
                        .outlets())
                .isTrue();
        assertThat(order(machine(2), check(0.0, null, 540.0), rate(bucket(2.0), bucket(9.0)), null)
                        .outlets())
                .isFalse();
    }

    @Test
    void aVaneThatFailedIsNotInOrder() {
        assertThat(order(machine(2), check(0.0, null, 540.0, false, true), rate(bucket(1.0)), null)
                        .outlets())
                .isFalse();
        assertThat(order(machine(1), check(0.0, null, 540.0, true, false), rate(bucket(null)), null)
                        .outlets())
                .isFalse();
    }

    private static final CheckItem[] ALL_BUT_GUARDS =
            EnumSet.complementOf(EnumSet.of(CheckItem.GUARDS)).toArray(CheckItem[]::new);

    /** Vanes, guards, PTO speed and bucket looked at, nothing wrong. */
    private static MachineOrder known(TypedSetup typed, MachineCheckResult check, RateResult rate) {
        return OrderOfCure.of(typed.read(), machine(2), check, rate, 540.0);
    }

    private static TypedSetup vaneSeen() {
        return TypedSetup.blank().type(MachineCheckPaths.VANE_LENGTH, MachineCheckPaths.VANES.item(0), "331 mm");
    }

    private static MachineCheckResult parts(List<CheckItem> failed, List<CheckItem> unanswered) {
        return new MachineCheckResult(List.of(), failed, List.of(), unanswered, 0.0, 0.0, 540.0, null, false);
    }

    private static List<AdviceReason.Kind> evidence(MachineOrder order) {
        return order.faults().stream().map(fault -> fault.evidence().kind()).toList();
    }

    @Test
    void allSeenAndInOrderIsNoFault() {
        assertThat(known(vaneSeen(), parts(List.of(), List.of()), rate(bucket(1.0))))
                .isEqualTo(new MachineOrder(true, true, true));
    }

    /** Each fault alone: what is wrong, what is done about it, and by how much. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0.021, 0, 540, 1, LEVEL_OFF, LEVEL_HEIGHT_TYRES, 2.1",
                "-0.08, 0, 540, 1, LEVEL_OFF, LEVEL_HEIGHT_TYRES, 8",
                "0, 0.21, 540, 1, TYRES_OFF, LEVEL_HEIGHT_TYRES, 0.21",
                "0, 0, 480, 1, PTO_OFF, PTO_SPEED, 480",
                "0, 0, 556.3, 1, PTO_OFF, PTO_SPEED, 556.3",
                "0, 0, -, 1, PTO_UNSEEN, PTO_SPEED, -",
                "0, 0, 540, -15, OUTLETS_UNEQUAL, OUTLETS_AND_VANES, -15",
                "0, 0, 540, 5.1, OUTLETS_UNEQUAL, OUTLETS_AND_VANES, 5.1",
                "0, 0, 540, -, OUTLETS_UNSEEN, OUTLETS_AND_VANES, -"
            })
    void eachFaultAlone(
            Double levelM,
            Double tyreBar,
            Double ptoRpm,
            Double leftRight,
            AdviceReason.Kind evidence,
            AdviceKind kind,
            Double figure) {
        MachineOrder order = known(vaneSeen(), check(levelM, tyreBar, ptoRpm), rate(bucket(leftRight)));
        assertThat(order.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.evidence().kind()).isEqualTo(evidence);
            assertThat(fault.kind()).isEqualTo(kind);
            assertThat(fault.seen()).isEqualTo(figure != null);
            if (figure != null) {
                assertThat(fault.evidence().numbers().get(0)).isEqualTo(figure, within(1e-9));
            }
        });
    }

    @Test
    void aVaneThatIsWornOrFailedIsNamed() {
        MachineCheckResult worn = new MachineCheckResult(
                List.of(
                        new VaneCheck(Side.LEFT, "long", 0.007, 2.0, true),
                        new VaneCheck(Side.RIGHT, "short", null, null, true),
                        new VaneCheck(Side.RIGHT, "long", 0.001, 0.3, false)),
                List.of(),
                List.of(),
                List.of(),
                0.0,
                0.0,
                540.0,
                null,
                false);
        assertThat(known(vaneSeen(), worn, rate(bucket(1.0))).faults())
                .containsExactly(
                        KnownFault.seen(
                                AdviceKind.OUTLETS_AND_VANES,
                                AdviceReason.about(AdviceReason.Kind.VANE_WORN, "long", -1, 7)),
                        KnownFault.seen(
                                AdviceKind.OUTLETS_AND_VANES,
                                AdviceReason.about(AdviceReason.Kind.VANE_FAILED, "short", 1)));
        TypedSetup goOn = new TypedSetup(
                MachineCheckPaths.VANE_OVERRIDE_REASON.path().set(vaneSeen().setup(), "new ones ordered"));
        assertThat(known(goOn, worn, rate(bucket(1.0))).faults()).isEmpty();
        assertThat(known(goOn, worn, rate(bucket(1.0))).outlets()).isTrue();
    }

    @Test
    void partsThatFailedCountEachForItsOwnKind() {
        MachineOrder order = known(
                vaneSeen(),
                parts(List.of(CheckItem.TYRES, CheckItem.DISCS, CheckItem.GUARDS), List.of()),
                rate(bucket(1.0)));
        assertThat(order.faults())
                .extracting(fault -> fault.evidence().subject() + " " + fault.kind())
                .containsExactly("GUARDS OUTLETS_AND_VANES", "TYRES LEVEL_HEIGHT_TYRES", "DISCS OUTLETS_AND_VANES");
    }

    /** A reason to go on out of level or off speed: seen, no fault. */
    @Test
    void whatIsOverriddenCountsAsSeen() {
        TypedSetup goOn = new TypedSetup(
                MachineCheckPaths.LEVEL_OVERRIDE_REASON.path().set(vaneSeen().setup(), "on the slope"));
        MachineOrder order = known(goOn, check(0.08, 0.5, 480.0), rate(bucket(1.0)));
        assertThat(order.faults()).isEmpty();
        assertThat(order.all()).isTrue();
    }

    /** Guards, vanes, PTO speed and outlets are asked for, in this order; the rest is counted. */
    @Test
    void whatWasNotLookedAt() {
        MachineCheckResult nothing = new MachineCheckResult(
                List.of(), List.of(), List.of(), List.of(CheckItem.values()), null, null, null, null, false);
        MachineOrder order = known(TypedSetup.blank(), nothing, NO_BUCKET);
        assertThat(evidence(order))
                .containsExactly(
                        AdviceReason.Kind.GUARDS_UNSEEN,
                        AdviceReason.Kind.VANES_UNSEEN,
                        AdviceReason.Kind.PTO_UNSEEN,
                        AdviceReason.Kind.OUTLETS_UNSEEN);
        assertThat(order.faults()).noneMatch(KnownFault::seen);
        // nine parts, level, tyres
        assertThat(order.skipped()).isEqualTo(11);
        assertThat(known(vaneSeen(), parts(List.of(), List.of(ALL_BUT_GUARDS)), rate(bucket(1.0))))
                .isEqualTo(new MachineOrder(true, true, true, List.of(), 9));
    }

    /** A row of a vane without length and answer was not looked at. */
    @Test
    void everyVaneIsLookedAt() {
        EntryPath<VaneEntry> second = MachineCheckPaths.VANES.item(1);
        TypedSetup two = vaneSeen().type(MachineCheckPaths.VANE_LENGTH_NEW, second, "245 mm");
        assertThat(evidence(known(two, parts(List.of(), List.of()), rate(bucket(1.0)))))
                .containsExactly(AdviceReason.Kind.VANES_UNSEEN);
        TypedSetup answered = new TypedSetup(
                MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED.at(second).set(two.setup(), CheckAnswer.GOOD));
        assertThat(known(answered, parts(List.of(), List.of()), rate(bucket(1.0)))
                        .faults())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"SLIGHTLY_DAMP, PRODUCT_DAMP", "CAKED, PRODUCT_CAKED"})
    void aDampProduct(Condition condition, AdviceReason.Kind evidence) {
        TypedSetup damp = vaneSeen().choose(ProductPaths.CONDITION, condition);
        assertThat(known(damp, parts(List.of(), List.of()), rate(bucket(1.0))).faults())
                .containsExactly(KnownFault.seen(AdviceKind.OUTLETS_AND_VANES, AdviceReason.of(evidence)));
    }
}
