package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;

/** How the levers stood. */
public final class LeverSettings {

    private static final double SAME_SHARE_OF_STEP = 0.01;

    private LeverSettings() {}

    /** Whether every lever stood alike, to a hundredth of its step; a lever that is told of only once did not. */
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
