package org.evenfall.trays;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What to do where one side gets less: never a lever first. */
final class SideAdvisor {

    /** Assumption: below this share of CV² the sides are not what is wrong first. */
    private static final double LEAST_SHARE = 0.01;

    private final AdviceInput input;
    private final Uniformity evenness;
    private final MirrorPairs pairs;

    /** @param evenness the last test, with its repeats */
    SideAdvisor(AdviceInput input, Uniformity evenness) {
        this.input = input;
        this.evenness = evenness;
        this.pairs = MirrorPairs.of(evenness, input.tramlines());
    }

    /** Whether one side gets less by more than chance. */
    boolean oneSided() {
        return pairs.significant();
    }

    /** Whether that is a good part of the unevenness. */
    boolean matters() {
        return oneSided() && pairs.sideSquare() >= LEAST_SHARE * evenness.cvPercent() * evenness.cvPercent();
    }

    /** What is seen in the trays. */
    AdviceReason evidence() {
        return AdviceReason.of(AdviceReason.Kind.ONE_SIDE, pairs.leftLessRightPercent(), pairs.distanceM());
    }

    /**
     * The first of level, PTO speed and outlets that was not seen in order; the vanes again where all were. Null where the
     * vanes were asked for after an earlier test: then a lever is allowed, with a reason that names the side.
     *
     * @param reasons so far; takes one more in each case
     * @param leverMayHelp both sides have a shape in common
     */
    @Nullable
    Advice advice(List<AdviceReason> reasons, boolean leverMayHelp) {
        MachineOrder order = input.machineOrder();
        if (order.all() && leverMayHelp && oneSidedBefore()) {
            reasons.add(AdviceReason.of(AdviceReason.Kind.STILL_ONE_SIDE, pairs.leftLessRightPercent()));
            return null;
        }
        reasons.add(evidence());
        if (!order.level()) {
            return first(AdviceKind.LEVEL_HEIGHT_TYRES, AdviceReason.of(AdviceReason.Kind.LEVEL_FIRST), reasons);
        }
        if (!order.pto()) {
            return first(AdviceKind.PTO_SPEED, AdviceReason.of(AdviceReason.Kind.PTO_FIRST), reasons);
        }
        AdviceReason outlets = order.outlets()
                ? AdviceReason.of(AdviceReason.Kind.VANES_AGAIN, pairs.leftLessRightPercent())
                : AdviceReason.of(AdviceReason.Kind.OUTLETS_FIRST);
        return first(AdviceKind.OUTLETS_AND_VANES, outlets, reasons);
    }

    private static Advice first(AdviceKind kind, AdviceReason action, List<AdviceReason> reasons) {
        reasons.add(action);
        return Advice.withoutMove(kind, reasons);
    }

    /** Whether one side got less in a test before the last. */
    private boolean oneSidedBefore() {
        List<AdviceInput.DoneTest> tests = input.tests();
        return tests.subList(0, tests.size() - 1).stream()
                .anyMatch(test ->
                        MirrorPairs.of(test.evenness(), input.tramlines()).significant());
    }
}
