package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;

/** Compares settings of levers. */
public final class LeverSettings {

    /** Assumption: settings nearer than this share of a step are the same; nobody reads a scale closer. */
    private static final double SAME_SHARE_OF_STEP = 0.01;

    private LeverSettings() {}

    /**
     * Whether every lever has the same setting in both, to a hundredth of its step. A lever with a setting in only one of
     * them differs; one without a setting in both does not.
     */
    public static boolean same(List<Lever> levers, Map<String, Double> one, Map<String, Double> other) {
        for (Lever lever : levers) {
            Double a = one.get(lever.label());
            Double b = other.get(lever.label());
            if (a == null ? b != null : b == null || Math.abs(a - b) > SAME_SHARE_OF_STEP * lever.step()) {
                return false;
            }
        }
        return true;
    }
}
