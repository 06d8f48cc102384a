package org.evenfall.setup.path;

import java.util.List;
import java.util.function.Predicate;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/**
 * A measured value with its unit.
 *
 * @param <R> the record it belongs to
 */
public final class Quantity<R> extends Entry<R, EnteredQuantity> implements Measured {

    private final RangeChoice range;
    private final boolean sums;
    private final @Nullable OtherLabel otherLabel;

    /**
     * Another label under a condition.
     *
     * @param when whether it holds
     * @param labelKey bundle key
     */
    private record OtherLabel(Predicate<Setup> when, String labelKey) {}

    Quantity(Part<R> part, Component<R, EnteredQuantity> component, RangeChoice range, boolean sums, Need need) {
        this(part, component, range, sums, null, need);
    }

    private Quantity(
            Part<R> part,
            Component<R, EnteredQuantity> component,
            RangeChoice range,
            boolean sums,
            @Nullable OtherLabel otherLabel,
            Need need) {
        super(part, component, need);
        this.range = range;
        this.sums = sums;
        this.otherLabel = otherLabel;
    }

    /** The same entry, with another label where a setup is such. */
    public Quantity<R> labelledWhen(Predicate<Setup> when, String labelKey) {
        return new Quantity<>(
                part(),
                component(),
                range,
                sums,
                new OtherLabel(when, labelKey),
                new Need(neededForCard(), missingKey()));
    }

    /** Bundle key of its label on the screen, as this setup is. */
    public String labelKey(Setup setup) {
        return otherLabel != null && otherLabel.when().test(setup) ? otherLabel.labelKey() : labelKey();
    }

    /** The same entry, hidden with names and prices. */
    public Quantity<R> keptPrivate() {
        return new Quantity<>(
                part(), component().keptPrivate(), range, sums, otherLabel, new Need(neededForCard(), missingKey()));
    }

    /** The same entry, of which several amounts may be typed with a plus between them. */
    public Quantity<R> summed() {
        return new Quantity<>(part(), component(), range, true, otherLabel, new Need(neededForCard(), missingKey()));
    }

    /** The same entry, needed for the card; the finding while nothing is typed has this key. */
    public Quantity<R> needed(String missingKey) {
        return new Quantity<>(part(), component(), range, sums, otherLabel, Need.always(missingKey));
    }

    /** The same entry, needed for the card under a condition that the assessment of its step knows. */
    public Quantity<R> neededByAssessment() {
        return new Quantity<>(part(), component(), range, sums, otherLabel, Need.BY_ASSESSMENT);
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
