package org.evenfall.setup.path;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;

/**
 * A measured value with its unit.
 *
 * @param <R> the record it belongs to
 */
public final class Quantity<R> extends Entry<R, EnteredQuantity> implements Measured {

    private final RangeChoice range;
    private final boolean sums;

    Quantity(Part<R> part, Component<R, EnteredQuantity> component, RangeChoice range, boolean sums, Need need) {
        super(part, component, need);
        this.range = range;
        this.sums = sums;
    }

    /** The same entry, of which several amounts may be typed with a plus between them. */
    public Quantity<R> summed() {
        return new Quantity<>(part(), component(), range, true, new Need(neededForCard(), missingKey()));
    }

    /** The same entry, needed for the card; the finding while nothing is typed has this key. */
    public Quantity<R> needed(String missingKey) {
        return new Quantity<>(part(), component(), range, sums, Need.always(missingKey));
    }

    /** The same entry, needed for the card under a condition that the assessment of its step knows. */
    public Quantity<R> neededByAssessment() {
        return new Quantity<>(part(), component(), range, sums, Need.BY_ASSESSMENT);
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
    public boolean sums() {
        return sums;
    }

    @Override
    public boolean isBlank(EnteredQuantity value) {
        return value.isBlank();
    }
}
