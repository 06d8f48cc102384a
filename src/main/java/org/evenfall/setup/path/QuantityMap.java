package org.evenfall.setup.path;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;

/**
 * One measured value for each lever, by the owner's label of it.
 *
 * @param <R> the record it belongs to
 */
public final class QuantityMap<R> extends Entry<R, Map<String, EnteredQuantity>> implements Measured {

    private final RangeChoice range;

    QuantityMap(Part<R> part, Component<R, Map<String, EnteredQuantity>> component, RangeChoice range) {
        super(part, component, Need.NO);
        this.range = range;
    }

    /** The value of one lever in the map that is at a place; not typed where the map lacks it. */
    public static EntryPath<EnteredQuantity> item(EntryPath<Map<String, EnteredQuantity>> map, String label) {
        return map.then(label, all -> all.getOrDefault(label, EnteredQuantity.EMPTY), (all, value) -> {
            Map<String, EnteredQuantity> changed = new LinkedHashMap<>(all);
            changed.put(label, value);
            return changed;
        });
    }

    @Override
    public Range range(Setup setup, EnteredQuantity typed) {
        return range.of(setup, typed);
    }

    @Override
    public List<Unit> units(Setup setup) {
        return range.units(setup);
    }

    @Override
    public boolean isBlank(Map<String, EnteredQuantity> value) {
        return value.values().stream().allMatch(EnteredQuantity::isBlank);
    }
}
