package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;

/**
 * One kind of entry: the units it may be typed in, what is possible and what is usual. All four limits are in the
 * first unit.
 *
 * @param key bundle key of its label
 * @param step the step it belongs to
 * @param units units it may be typed in; the first is the one the limits are in
 * @param low lowest possible
 * @param high highest possible
 * @param usualLow lowest usual; outside it a warning, no refusal
 * @param usualHigh highest usual
 * @param decimals decimals the limits are shown with
 */
public record FieldSpec(
        String key,
        Step step,
        List<Unit> units,
        double low,
        double high,
        double usualLow,
        double usualHigh,
        int decimals) {

    public FieldSpec {
        units = List.copyOf(units);
        if (!(low <= usualLow && usualLow <= usualHigh && usualHigh <= high)) {
            throw new IllegalArgumentException(key + ": limits out of order");
        }
    }

    /** The unit the limits and the read value are in. */
    public Unit base() {
        return units.get(0);
    }
}
