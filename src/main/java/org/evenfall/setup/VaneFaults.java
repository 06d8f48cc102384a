package org.evenfall.setup;

import java.util.List;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.Side;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;
import org.evenfall.trays.KnownFault;

/** Vanes that failed, and whether they were looked at. */
final class VaneFaults {

    private VaneFaults() {}

    /** One fault a vane that failed, in their order. */
    static List<KnownFault> of(List<VaneCheck> vanes) {
        return vanes.stream()
                .filter(VaneCheck::failed)
                .map(vane -> KnownFault.seen(AdviceKind.OUTLETS_AND_VANES, evidence(vane)))
                .toList();
    }

    private static AdviceReason evidence(VaneCheck vane) {
        double side = vane.side() == Side.LEFT ? -1 : vane.side() == Side.RIGHT ? 1 : 0;
        Double wearM = vane.wearM();
        return wearM != null && OrderOfCure.off(wearM, MachineCheck.WORST_VANE_WEAR_M)
                ? AdviceReason.about(AdviceReason.Kind.VANE_WORN, vane.label(), side, Unit.M.to(Unit.MM, wearM))
                : AdviceReason.about(AdviceReason.Kind.VANE_FAILED, vane.label(), side);
    }

    /** At least one vane is entered, and each that is has a length or an answer. */
    static boolean allSeen(ReadSetup read) {
        int vanes = read.get(MachineCheckPaths.VANES).size();
        for (int i = 0; i < vanes; i++) {
            EntryPath<VaneEntry> at = MachineCheckPaths.VANES.item(i);
            if (read.number(MachineCheckPaths.VANE_LENGTH, at) == null
                    && at.get(read.setup()).straightSmoothUnholed() == CheckAnswer.UNANSWERED) {
                return false;
            }
        }
        return vanes > 0;
    }
}
