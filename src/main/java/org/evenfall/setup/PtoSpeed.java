package org.evenfall.setup;

import java.util.Optional;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineProfile;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.KnownFault;
import org.jspecify.annotations.Nullable;

/**
 * The PTO speed as measured, against the wanted one and against the handbook.
 *
 * @param measuredRpm null while it is not measured
 * @param wantedRpm null where none is known: none is typed and the handbook does not allow the usual one
 * @param beyondHandbook outside what the handbook allows
 */
record PtoSpeed(@Nullable Double measuredRpm, @Nullable Double wantedRpm, boolean beyondHandbook) {

    /** Wanted where the settings state none, rpm. Source (from memory): ISO 500-1, PTO type 1. */
    private static final double USUAL_RPM = 540;

    /** @param typedRpm PTO speed of the settings to start from; null while it is not typed */
    static PtoSpeed of(MachineProfile machine, @Nullable Double measuredRpm, @Nullable Double typedRpm) {
        Double usual = SettingsAssessor.beyond(machine, USUAL_RPM) ? null : Double.valueOf(USUAL_RPM);
        return new PtoSpeed(
                measuredRpm,
                typedRpm == null ? usual : typedRpm,
                measuredRpm != null && SettingsAssessor.beyond(machine, measuredRpm));
    }

    boolean measured() {
        return measuredRpm != null;
    }

    /** What is wrong with it; empty where it is in order or not measured. */
    Optional<KnownFault> fault() {
        if (measuredRpm == null) {
            return Optional.empty();
        }
        if (wantedRpm != null
                && OrderOfCure.off(
                        MachineCheck.ptoDeviationPercent(measuredRpm, wantedRpm), MachineCheck.WORST_PTO_PERCENT)) {
            return Optional.of(fault(AdviceReason.of(AdviceReason.Kind.PTO_OFF, measuredRpm, wantedRpm)));
        }
        return beyondHandbook
                ? Optional.of(fault(AdviceReason.of(AdviceReason.Kind.PTO_BEYOND, measuredRpm)))
                : Optional.empty();
    }

    private static KnownFault fault(AdviceReason evidence) {
        return KnownFault.seen(AdviceKind.PTO_SPEED, evidence);
    }
}
