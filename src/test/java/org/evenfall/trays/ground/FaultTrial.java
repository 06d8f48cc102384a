package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.evenfall.trays.AdviceInput.DoneTest;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.MachineOrder;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.UniformityCalculator;

/**
 * The first advice on a machine with a fault.
 *
 * @param truePercent true field CV, %
 * @param kind what is advised first
 */
record FaultTrial(double truePercent, AdviceKind kind) {

    /** Wind that the owner types where there was none to speak of, m/s. */
    private static final double CALM_M_PER_S = 1;

    /** What the owner says of the machine and the wind. */
    enum Owner {
        /** The fault was found and typed, all else is in order. */
        KNOWS,
        /** Nothing was looked at or measured. */
        DID_NOT_LOOK,
        /** All is entered as in order, the wind calm. */
        SAYS_GOOD
    }

    /** @param wellSet at the good setting of the levers, else at the start */
    static FaultTrial run(Site site, Fault fault, boolean wellSet, Owner owner) {
        Map<String, Double> settings = wellSet ? site.good() : site.start();
        TrueField field = site.machine().field(site.first(settings), site.second(settings), fault);
        TrayCatches caught =
                TrayTest.catches(site.job(), field.overTrays(site.job()), TrayTest.seed(site, settings, 0), true, 0);
        TrayCatches typed = fault.spoiltTray() == 1 ? caught : spoilt(caught, fault.spoiltTray(), site.seed());
        Double wind = switch (owner) {
            case KNOWS -> Math.max(CALM_M_PER_S, fault.windMPerS());
            case DID_NOT_LOOK -> null;
            case SAYS_GOOD -> CALM_M_PER_S;
        };
        MachineOrder order = switch (owner) {
            case KNOWS -> Asking.known(fault);
            case DID_NOT_LOOK -> Asking.NOT_LOOKED_AT;
            case SAYS_GOOD -> Asking.IN_ORDER;
        };
        List<DoneTest> tests = List.of(new DoneTest(UniformityCalculator.of(typed), settings, wind));
        return new FaultTrial(
                field.cvPercent(),
                Asking.advice(site, tests, site.levers(), false, order).kind());
    }

    private static TrayCatches spoilt(TrayCatches caught, double share, long seed) {
        List<Double> grams = new ArrayList<>(caught.catchesG());
        int which = (int) Math.floorMod(seed, (long) grams.size());
        grams.set(which, share * grams.get(which));
        return new TrayCatches(
                caught.positionsM(),
                grams,
                caught.tramlineWidthM(),
                caught.pattern(),
                caught.trayAreaM2(),
                caught.runs(),
                caught.meanGranuleG(),
                caught.readingStepG());
    }

    /**
     * The kinds that are right. Known: the cure of the fault. Not looked at: any look at the machine, a wait or a repeat.
     * Entered as good: a look at what is left to blame, the outlets and vanes, or a repeat for wind and a spoilt tray. A
     * machine without a fault: keep it, or move a lever where it is mis-set.
     */
    static Set<AdviceKind> right(Fault fault, boolean wellSet, Owner owner) {
        if (fault == Fault.NONE) {
            return Set.of(wellSet ? AdviceKind.KEEP : AdviceKind.MOVE_LEVER);
        }
        boolean machine = fault.spoiltTray() == 1 && fault.windMPerS() == 0;
        Set<AdviceKind> right = EnumSet.copyOf(fault.cures());
        if (owner == Owner.KNOWS) {
            return right;
        }
        right.add(machine ? AdviceKind.OUTLETS_AND_VANES : AdviceKind.REPEAT_TEST);
        if (owner == Owner.DID_NOT_LOOK && fault.spoiltTray() == 1) {
            right.addAll(Set.of(AdviceKind.LEVEL_HEIGHT_TYRES, AdviceKind.PTO_SPEED, AdviceKind.OUTLETS_AND_VANES));
        }
        return right;
    }
}
