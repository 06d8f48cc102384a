package org.evenfall.trays.ground;

import java.util.List;
import org.evenfall.machine.Lever;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.Advisor;
import org.evenfall.trays.LeverRules;
import org.evenfall.trays.MachineOrder;
import org.evenfall.trays.WindLimits;

/** The one place that puts the question to the advice. */
final class Asking {

    /** All was measured and is within limits. */
    static final MachineOrder IN_ORDER = new MachineOrder(true, true, true);

    /** Nothing was looked at. */
    static final MachineOrder NOT_LOOKED_AT = new MachineOrder(false, false, false);

    private Asking() {}

    /** What the owner knows of the machine where a fault is known. */
    static MachineOrder known(Fault fault) {
        boolean outlets = fault.wornShare() == 0 && fault.leftOutlet() == 1;
        return new MachineOrder(fault.rollDeg() == 0, true, outlets);
    }

    static Advice advice(
            Site site, List<AdviceInput.DoneTest> tests, List<Lever> typed, boolean twoLevers, MachineOrder order) {
        return Advisor.advise(new AdviceInput(
                tests, new LeverRules(typed, twoLevers), order, site.job().tramlines(), WindLimits.USUAL));
    }
}
