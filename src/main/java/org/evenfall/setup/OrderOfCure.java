package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.KnownFault;
import org.evenfall.trays.MachineOrder;
import org.jspecify.annotations.Nullable;

/**
 * What must be in order before a lever is moved, in the order of cure: guards, vanes, parts, level, tyres, PTO speed,
 * outlets, product; then what was not looked at yet of guards, vanes, PTO speed and outlets. What is overridden with a typed
 * reason counts as seen.
 */
final class OrderOfCure {

    /** Rounding room in which a difference still counts as within its limit. */
    private static final double ROUNDING = 1e-9;

    private final ReadSetup read;
    private final MachineCheckResult check;
    private final @Nullable BucketResult bucket;
    private final boolean oneOutlet;
    private final PtoSpeed pto;
    private final boolean levelOverridden;
    private final boolean vanesOverridden;
    private final List<KnownFault> faults = new ArrayList<>();

    private OrderOfCure(ReadSetup read, MachineCheckResult check, RateResult rate, boolean oneOutlet, PtoSpeed pto) {
        this.read = read;
        this.check = check;
        this.bucket = rate.lastBucket();
        this.oneOutlet = oneOutlet;
        this.pto = pto;
        this.levelOverridden = !read.isBlank(MachineCheckPaths.LEVEL_OVERRIDE_REASON);
        this.vanesOverridden = !read.isBlank(MachineCheckPaths.VANE_OVERRIDE_REASON);
    }

    /** @param ptoWantedRpm PTO speed of the settings to start from; null while it is not typed */
    static MachineOrder of(
            ReadSetup read,
            MachineProfile machine,
            MachineCheckResult check,
            RateResult rate,
            @Nullable Double ptoWantedRpm) {
        PtoSpeed pto = PtoSpeed.of(machine, check.ptoRpm(), ptoWantedRpm);
        return new OrderOfCure(read, check, rate, machine.outlets() == 1, pto).order();
    }

    private MachineOrder order() {
        parts(true);
        if (!vanesOverridden) {
            faults.addAll(VaneFaults.of(check.vanes()));
        }
        parts(false);
        beyond(
                AdviceKind.LEVEL_HEIGHT_TYRES,
                AdviceReason.Kind.LEVEL_OFF,
                !levelOverridden && off(check.levelDifferenceM(), MachineCheck.WORST_LEVEL_M),
                check.levelDifferenceM() == null ? 0 : Unit.M.to(Unit.CM, Math.abs(check.levelDifferenceM())));
        beyond(
                AdviceKind.LEVEL_HEIGHT_TYRES,
                AdviceReason.Kind.TYRES_OFF,
                !levelOverridden && off(check.tyreDifferenceBar(), MachineCheck.WORST_TYRE_BAR),
                check.tyreDifferenceBar() == null ? 0 : Math.abs(check.tyreDifferenceBar()));
        if (!levelOverridden) {
            pto.fault().ifPresent(faults::add);
        }
        Double leftRight = leftRightPercent();
        beyond(
                AdviceKind.OUTLETS_AND_VANES,
                AdviceReason.Kind.OUTLETS_UNEQUAL,
                off(leftRight, BucketAssessment.WORST_LEFT_RIGHT_PERCENT),
                leftRight == null ? 0 : leftRight);
        product();
        unseen(check.unanswered().contains(CheckItem.GUARDS), AdviceReason.Kind.GUARDS_UNSEEN);
        unseen(!VaneFaults.allSeen(read), AdviceReason.Kind.VANES_UNSEEN);
        if (!pto.measured()) {
            faults.add(KnownFault.unseen(AdviceKind.PTO_SPEED, AdviceReason.Kind.PTO_UNSEEN));
        }
        unseen(!outletsSeen(), AdviceReason.Kind.OUTLETS_UNSEEN);
        return new MachineOrder(levelInOrder(), ptoInOrder(), outletsInOrder(), faults, skipped());
    }

    /** @param guards the guards alone, or all but them */
    private void parts(boolean guards) {
        for (CheckItem item : check.failed()) {
            if ((item == CheckItem.GUARDS) == guards) {
                boolean level = item == CheckItem.LEVEL || item == CheckItem.TILT || item == CheckItem.TYRES;
                faults.add(KnownFault.seen(
                        level ? AdviceKind.LEVEL_HEIGHT_TYRES : AdviceKind.OUTLETS_AND_VANES,
                        AdviceReason.about(AdviceReason.Kind.PART_FAILED, item.name())));
            }
        }
    }

    private void product() {
        Condition condition = read.get(ProductPaths.CONDITION);
        if (condition == Condition.SLIGHTLY_DAMP || condition == Condition.CAKED) {
            faults.add(KnownFault.seen(
                    AdviceKind.OUTLETS_AND_VANES,
                    AdviceReason.of(
                            condition == Condition.CAKED
                                    ? AdviceReason.Kind.PRODUCT_CAKED
                                    : AdviceReason.Kind.PRODUCT_DAMP)));
        }
    }

    private void beyond(AdviceKind kind, AdviceReason.Kind evidence, boolean off, double figure) {
        if (off) {
            faults.add(KnownFault.seen(kind, AdviceReason.of(evidence, figure)));
        }
    }

    private void unseen(boolean open, AdviceReason.Kind evidence) {
        if (open) {
            faults.add(KnownFault.unseen(AdviceKind.OUTLETS_AND_VANES, evidence));
        }
    }

    /** A machine with one outlet has no other to differ from. */
    private boolean outletsSeen() {
        return bucket != null && (oneOutlet || bucket.agreement().leftRightPercent() != null);
    }

    private @Nullable Double leftRightPercent() {
        return bucket == null || oneOutlet ? null : bucket.agreement().leftRightPercent();
    }

    private boolean levelInOrder() {
        return levelOverridden
                || (check.levelDifferenceM() != null
                        && !off(check.levelDifferenceM(), MachineCheck.WORST_LEVEL_M)
                        && !off(check.tyreDifferenceBar(), MachineCheck.WORST_TYRE_BAR));
    }

    private boolean ptoInOrder() {
        return pto.measured() && (levelOverridden || pto.fault().isEmpty());
    }

    private boolean outletsInOrder() {
        return outletsSeen()
                && !off(leftRightPercent(), BucketAssessment.WORST_LEFT_RIGHT_PERCENT)
                && (vanesOverridden || check.vanes().stream().noneMatch(VaneCheck::failed));
    }

    /** Open parts that do not keep a lever back: those of the walk round but the guards, level, tyres. */
    private int skipped() {
        long parts = check.unanswered().stream()
                .filter(item -> item != CheckItem.GUARDS)
                .count();
        return (int) parts + (check.levelDifferenceM() == null ? 1 : 0) + (check.tyreDifferenceBar() == null ? 1 : 0);
    }

    /** Whether a difference is known and beyond its limit. */
    static boolean off(@Nullable Double value, double limit) {
        return value != null && Math.abs(value) > limit + ROUNDING;
    }
}
