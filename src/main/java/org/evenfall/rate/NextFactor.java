package org.evenfall.rate;

import org.evenfall.machine.FactorRule;
import org.jspecify.annotations.Nullable;

/** Next calibration factor of a terminal. */
final class NextFactor {

    private NextFactor() {}

    /**
     * Old factor × caught ÷ shown, or its inverse, as the handbook says.
     *
     * @param caughtOverShown weight caught ÷ weight shown, above 0
     * @return null while the rule is not known
     */
    static @Nullable Double of(double factor, double caughtOverShown, FactorRule rule) {
        return switch (rule) {
            case UNANSWERED -> null;
            case CAUGHT_OVER_SHOWN -> Double.valueOf(factor * caughtOverShown);
            case SHOWN_OVER_CAUGHT -> Double.valueOf(factor / caughtOverShown);
        };
    }
}
