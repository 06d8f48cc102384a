package org.evenfall.setup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.Dimension;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.Text;
import org.jspecify.annotations.Nullable;

/**
 * A setup with every number and date in it read once, in core units.
 *
 * @param setup what was typed
 * @param numbers by JSON pointer: every quantity that can be used, in the core unit of its range
 * @param dates by JSON pointer: every date that can be used
 * @param findings what could not be used, what is unusual, and what is missing for the card, each at its own entry
 */
public record ReadSetup(
        Setup setup, Map<String, Double> numbers, Map<String, LocalDate> dates, List<Finding> findings) {

    /** Copies the maps and the list. */
    public ReadSetup {
        numbers = Map.copyOf(numbers);
        dates = Map.copyOf(dates);
        findings = List.copyOf(findings);
    }

    /** The number at a place, in the core unit; null when nothing is typed there or it cannot be used. */
    @Nullable
    Double number(EntryPath<EnteredQuantity> path) {
        return numbers.get(path.pointer());
    }

    /** The number of an entry that a setup has once. */
    @Nullable
    Double number(Quantity<?> entry) {
        return numbers.get(entry.pointer());
    }

    /** The number of an entry of the record that is at a place. */
    @Nullable
    <R> Double number(Quantity<R> entry, EntryPath<R> record) {
        return number(entry.at(record));
    }

    /** The numbers of a list, in order; a value that is not typed or cannot be used is left out. */
    List<Double> numbers(EntryPath<List<EnteredQuantity>> list) {
        List<Double> usable = new ArrayList<>();
        for (Double number : numbersOrNull(list)) {
            if (number != null) {
                usable.add(number);
            }
        }
        return usable;
    }

    /** The numbers of a list that a setup has once. */
    List<Double> numbers(QuantityList<?> entry) {
        return numbers(entry.path());
    }

    /** One number or null for each item of a list. */
    List<@Nullable Double> numbersOrNull(EntryPath<List<EnteredQuantity>> list) {
        List<@Nullable Double> all = new ArrayList<>();
        for (int i = 0; i < list.get(setup).size(); i++) {
            all.add(number(QuantityList.item(list, i)));
        }
        return all;
    }

    /** The number of an entry as it was typed, with its unit, for a sentence about it. */
    Arg typed(Quantity<?> entry) {
        return typed(entry, entry.path());
    }

    /** The number at a place as it was typed, with its unit, for a sentence about it. */
    Arg typed(Measured entry, EntryPath<EnteredQuantity> path) {
        EnteredQuantity typed = path.get(setup);
        return Arg.typed(
                typed.unit() == Unit.NONE
                        ? typed.withUnit(entry.range(setup, typed).shown())
                        : typed);
    }

    /** Whether the nitrogen rate is in fertiliser units, whose basis is asked. */
    boolean isInFertiliserUnits() {
        Unit core = RatePaths.NITROGEN_RATE
                .range(setup, RatePaths.NITROGEN_RATE.get(setup))
                .core();
        return core.dimension() == Dimension.NUTRIENT_UNITS;
    }

    /** The date of an entry that a setup has once; null when nothing is typed or it is no date. */
    @Nullable
    LocalDate date(Text<?> entry) {
        return dates.get(entry.pointer());
    }

    /** The date of an entry of the record that is at a place; null when nothing is typed or it is no date. */
    @Nullable
    <R> LocalDate date(Text<R> entry, EntryPath<R> record) {
        return dates.get(entry.at(record).pointer());
    }

    /** What is typed or chosen in an entry that a setup has once. */
    <T> T get(Entry<?, T> entry) {
        return entry.get(setup);
    }

    /** Whether nothing is typed or chosen in an entry that a setup has once. */
    <T> boolean isBlank(Entry<?, T> entry) {
        return entry.isBlank(entry.get(setup));
    }
}
