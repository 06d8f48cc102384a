package org.evenfall.setup.path;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;

/** Which range an entry has: mostly one, sometimes it depends on another answer or on the unit that was typed. */
public interface RangeChoice {

    /** The range by which a typed value is read. */
    Range of(Setup setup, EnteredQuantity typed);

    /** Units that are offered, the usual one first. */
    List<Unit> units(Setup setup);

    /** Always the same range. */
    static RangeChoice always(Range range) {
        return byAnswer(setup -> range);
    }

    /** A range that follows from another answer, for example from how the trays are read. */
    static RangeChoice byAnswer(Function<Setup, Range> rule) {
        return new RangeChoice() {
            @Override
            public Range of(Setup setup, EnteredQuantity typed) {
                return rule.apply(setup);
            }

            @Override
            public List<Unit> units(Setup setup) {
                return UnitOrder.of(setup, rule.apply(setup).units());
            }
        };
    }

    /** The first range whose dimension is that of the typed unit; the first of all where no unit was typed. */
    static RangeChoice byUnit(Range... ranges) {
        return new RangeChoice() {
            @Override
            public Range of(Setup setup, EnteredQuantity typed) {
                Unit unit = typed.withUnitFromText().unit();
                for (Range range : ranges) {
                    if (range.core().dimension() == unit.dimension()) {
                        return range;
                    }
                }
                return ranges[0];
            }

            @Override
            public List<Unit> units(Setup setup) {
                List<Unit> units = new ArrayList<>();
                for (Range range : ranges) {
                    units.addAll(range.units());
                }
                return UnitOrder.of(setup, units);
            }
        };
    }
}
