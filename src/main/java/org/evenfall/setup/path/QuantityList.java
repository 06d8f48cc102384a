package org.evenfall.setup.path;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;

/**
 * A list of measured values of one kind, for example the weights of repeated fillings.
 *
 * @param <R> the record it belongs to
 */
public final class QuantityList<R> extends Entry<R, List<EnteredQuantity>> implements Measured {

    private final RangeChoice range;
    private final boolean sums;

    QuantityList(
            Part<R> part, Component<R, List<EnteredQuantity>> component, RangeChoice range, boolean sums, Need need) {
        super(part, component, need);
        this.range = range;
        this.sums = sums;
    }

    /** The same entry, of which several amounts may be typed with a plus between them. */
    public QuantityList<R> summed() {
        return new QuantityList<>(part(), component(), range, true, new Need(neededForCard(), missingKey()));
    }

    /** The same entry, needed for the card; the finding while nothing is typed has this key. */
    public QuantityList<R> needed(String missingKey) {
        return new QuantityList<>(part(), component(), range, sums, Need.always(missingKey));
    }

    /** The same entry, needed for the card under a condition that the assessment of its step knows. */
    public QuantityList<R> neededByAssessment() {
        return new QuantityList<>(part(), component(), range, sums, Need.BY_ASSESSMENT);
    }

    /** One value of the list that is at a place. */
    public static EntryPath<EnteredQuantity> item(EntryPath<List<EnteredQuantity>> list, int index) {
        return EntryPath.item(list, index, EnteredQuantity.EMPTY);
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
    public boolean isBlank(List<EnteredQuantity> value) {
        return value.stream().allMatch(EnteredQuantity::isBlank);
    }
}
