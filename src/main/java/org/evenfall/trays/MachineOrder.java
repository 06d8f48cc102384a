package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is known of machine and product before the trays are looked at. Where they show that one side gets less, the first
 * that is not in order is the next to look at; the faults come before a lever whatever the trays show.
 *
 * @param level level, height and tyres were measured and are within limits
 * @param pto so was the PTO speed
 * @param outlets so were both outlets, in the bucket, and the vanes
 * @param faults what comes before a lever, in the order of cure
 * @param skipped how many other parts of the machine check are open, at least 0: they do not keep a lever back, but what a
 *     move will do is less certain
 */
public record MachineOrder(boolean level, boolean pto, boolean outlets, List<KnownFault> faults, int skipped) {

    /** All was looked at and is in order. */
    public static final MachineOrder IN_ORDER = new MachineOrder(true, true, true);

    /** @throws IllegalArgumentException for a negative number of skipped parts */
    public MachineOrder {
        faults = List.copyOf(faults);
        if (skipped < 0) {
            throw new IllegalArgumentException("skipped must be at least 0: " + skipped);
        }
    }

    /** A machine without a fault; what is not in order was not looked at. */
    public MachineOrder(boolean level, boolean pto, boolean outlets) {
        this(level, pto, outlets, notLookedAt(pto, outlets), level ? 0 : 1);
    }

    private static List<KnownFault> notLookedAt(boolean pto, boolean outlets) {
        List<KnownFault> faults = new ArrayList<>();
        if (!pto) {
            faults.add(KnownFault.unseen(AdviceKind.PTO_SPEED, AdviceReason.Kind.PTO_UNSEEN));
        }
        if (!outlets) {
            faults.add(KnownFault.unseen(AdviceKind.OUTLETS_AND_VANES, AdviceReason.Kind.OUTLETS_UNSEEN));
        }
        return faults;
    }

    /** Whether level, PTO speed and outlets are in order. */
    public boolean all() {
        return level && pto && outlets;
    }

    /** The first fault that was seen. */
    Optional<KnownFault> firstSeen() {
        return faults.stream().filter(KnownFault::seen).findFirst();
    }

    /** The first part that is to be looked at before a lever is moved. */
    Optional<KnownFault> firstUnseen() {
        return faults.stream().filter(fault -> !fault.seen()).findFirst();
    }
}
