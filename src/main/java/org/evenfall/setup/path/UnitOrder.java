package org.evenfall.setup.path;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;

/** The order in which units are offered: those that the person chose come first. */
final class UnitOrder {

    private static final Set<Unit> ACRE =
            Set.of(Unit.FT, Unit.IN, Unit.LB, Unit.AC, Unit.LB_PER_AC, Unit.MPH, Unit.LB_PER_MIN);

    private UnitOrder() {}

    /** The same units, the first being the one that is assumed while somebody types. */
    static List<Unit> of(Setup setup, List<Unit> units) {
        return setup.start().units() == UnitSystem.ACRE
                ? units.stream()
                        .sorted(Comparator.comparing((Unit unit) -> !ACRE.contains(unit)))
                        .toList()
                : units;
    }
}
