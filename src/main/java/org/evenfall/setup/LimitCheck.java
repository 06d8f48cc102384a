package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.Range;
import org.evenfall.setup.path.ShownLimits;
import org.jspecify.annotations.Nullable;

/** Whether a number is within the limits of its entry. */
final class LimitCheck {

    /** Most decimals of a computed number. */
    private static final int MOST_DECIMALS = 3;

    private LimitCheck() {}

    /**
     * What is wrong with a number that was typed; null within the usual limits.
     *
     * @param value in the core unit
     * @param shown as it was typed
     * @param unit the unit it was typed in
     */
    static @Nullable Finding typed(double value, Arg shown, Unit unit, Range range, EntryPath<?> path) {
        if (range.usual().contain(value)) {
            return null;
        }
        boolean possible = range.possible().contain(value);
        ShownLimits limits = range.in(unit, possible ? range.usual() : range.possible());
        return new Finding(
                possible ? FindingKind.WARNING : FindingKind.STOP,
                path.step(),
                possible ? "entry.unusual" : "entry.impossible",
                List.of(Arg.word(range.nameKey()), shown, limits.low(), limits.high()),
                path.pointer(),
                "");
    }

    /** The same for a number that was computed, in the core unit; with enough decimals to be outside its limits. */
    static @Nullable Finding computed(double value, Range range, EntryPath<?> path) {
        Limits limits = range.possible().contain(value) ? range.usual() : range.possible();
        int decimals = 0;
        while (decimals < MOST_DECIMALS && limits.contain(rounded(value, decimals))) {
            decimals++;
        }
        return typed(value, Arg.number(value, decimals, range.core()), range.core(), range, path);
    }

    private static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.round(value * scale) / scale;
    }
}
