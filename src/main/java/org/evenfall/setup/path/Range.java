package org.evenfall.setup.path;

import java.util.List;
import org.evenfall.quantity.Unit;

/**
 * What numbers an entry takes.
 *
 * @param nameKey bundle key of what is measured, for example {@code field.speed}
 * @param core the unit in which the core computes and in which the limits are
 * @param units units it may be typed in, all of one dimension; the first is assumed where none was typed
 * @param possible outside it the entry is refused
 * @param usual outside it a warning
 * @param decimals decimals with which the limits are shown
 */
public record Range(String nameKey, Unit core, List<Unit> units, Limits possible, Limits usual, int decimals) {

    /** @throws IllegalArgumentException when a unit is of another dimension or the usual limits exceed the possible ones */
    public Range {
        units = List.copyOf(units);
        for (Unit unit : units) {
            if (unit.dimension() != core.dimension()) {
                throw new IllegalArgumentException(nameKey + ": " + unit + " is no unit of " + core.dimension());
            }
        }
        if (units.isEmpty() || !possible.contain(usual)) {
            throw new IllegalArgumentException(nameKey + ": no unit, or usual limits outside the possible ones");
        }
    }

    /** The unit assumed where none was typed. */
    public Unit shown() {
        return units.get(0);
    }

    /** A limit in the unit in which the entry is shown. */
    public double inShownUnit(double coreValue) {
        return core.to(shown(), coreValue);
    }

    /** The same range under another name. */
    Range named(String key) {
        return new Range(key, core, units, possible, usual, decimals);
    }

    /** The same range with other usual limits, in the core unit. */
    Range usually(double low, double high) {
        return new Range(nameKey, core, units, possible, new Limits(low, high), decimals);
    }
}
