package org.evenfall.setup;

import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.VaneCheck;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.trays.MachineOrder;
import org.jspecify.annotations.Nullable;

/**
 * What must be in order before a lever is moved: measured, and within its limits.
 */
final class OrderOfCure {

    /** Rounding room in which a difference still counts as within its limit. */
    private static final double ROUNDING = 1e-9;

    private OrderOfCure() {}

    /** @param ptoWantedRpm PTO speed of the settings to start from; null while it is not typed */
    static MachineOrder of(
            MachineProfile machine, MachineCheckResult check, RateResult rate, @Nullable Double ptoWantedRpm) {
        return new MachineOrder(
                within(check.levelDifferenceM(), MachineCheck.WORST_LEVEL_M)
                        && (check.tyreDifferenceBar() == null
                                || within(check.tyreDifferenceBar(), MachineCheck.WORST_TYRE_BAR)),
                ptoInOrder(machine, check.ptoRpm(), ptoWantedRpm),
                outletsInOrder(machine, rate.lastBucket(), check));
    }

    private static boolean ptoInOrder(
            MachineProfile machine, @Nullable Double measuredRpm, @Nullable Double wantedRpm) {
        return measuredRpm != null
                && !SettingsAssessor.beyond(machine, measuredRpm)
                && (wantedRpm == null
                        || within(
                                MachineCheck.ptoDeviationPercent(measuredRpm, wantedRpm),
                                MachineCheck.WORST_PTO_PERCENT));
    }

    /** A machine with one outlet has no other to differ from. */
    private static boolean outletsInOrder(
            MachineProfile machine, @Nullable BucketResult last, MachineCheckResult check) {
        return last != null
                && (machine.outlets() == 1
                        || within(last.agreement().leftRightPercent(), BucketAssessment.WORST_LEFT_RIGHT_PERCENT))
                && check.vanes().stream().noneMatch(VaneCheck::failed);
    }

    private static boolean within(@Nullable Double value, double limit) {
        return value != null && Math.abs(value) <= limit + ROUNDING;
    }
}
