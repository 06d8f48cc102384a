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
 */
public record Range(String nameKey, Unit core, List<Unit> units, Limits possible, Limits usual) {

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

    /** Limits of this range as they are shown in one of its units. */
    public ShownLimits in(Unit unit, Limits limits) {
        return ShownLimits.of(core.to(unit, limits.low()), core.to(unit, limits.high()), unit);
    }

    /** The same range under another name. */
    Range named(String key) {
        return new Range(key, core, units, possible, usual);
    }

    /** The same range with other usual limits, in the core unit. */
    Range usually(double low, double high) {
        return new Range(nameKey, core, units, possible, new Limits(low, high));
    }
}
