package org.evenfall.setup.path;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/**
 * An entries record as a part of a setup: the places where a setup has it, and the makers of its entries.
 *
 * @param <R> the record
 */
public final class Part<R> {

    private final @Nullable EntryPath<R> only;
    private final List<String> patterns;
    private final Function<Setup, Stream<EntryPath<R>>> places;

    private Part(@Nullable EntryPath<R> only, List<String> patterns, Function<Setup, Stream<EntryPath<R>>> places) {
        this.only = only;
        this.patterns = List.copyOf(patterns);
        this.places = places;
    }

    /** A top-level part, which a setup has once. */
    static <R> Part<R> top(String name, Step step, Function<Setup, R> getter, BiFunction<Setup, R, Setup> wither) {
        return once(EntryPath.top(name, step, getter, wither));
    }

    private static <R> Part<R> once(EntryPath<R> path) {
        return new Part<>(path, List.of(path.pointer()), setup -> Stream.of(path));
    }

    /** A record that a setup may have at several places. */
    static <R> Part<R> of(List<String> patterns, Function<Setup, Stream<EntryPath<R>>> places) {
        return new Part<>(null, patterns, places);
    }

    /** A record within this record. */
    <U> Part<U> part(String name, Function<R, U> getter, BiFunction<R, U, R> wither) {
        return only == null
                ? of(
                        patterns.stream().map(pattern -> pattern + "/" + name).toList(),
                        setup -> places(setup).map(place -> place.then(name, getter, wither)))
                : once(only.then(name, getter, wither));
    }

    /** A record within this record, to be bound to one place of this record. */
    <U> Nested<R, U> nested(String name, Function<R, U> getter, BiFunction<R, U, R> wither) {
        return new Nested<>(this, name, getter, wither);
    }

    /** This record wherever this part or another part has it. */
    Part<R> or(Part<R> other) {
        return of(
                Stream.concat(patterns.stream(), other.patterns.stream()).toList(),
                setup -> Stream.concat(places(setup), other.places(setup)));
    }

    /**
     * The place of a record that a setup has once.
     *
     * @throws IllegalStateException when it is an item of a list or is used at several places
     */
    public EntryPath<R> only() {
        if (only == null) {
            throw new IllegalStateException(patterns + " is not one place; name the item");
        }
        return only;
    }

    /** Every place where a setup has it. */
    public Stream<EntryPath<R>> places(Setup setup) {
        return places.apply(setup);
    }

    /** JSON pointers with {@code *} for any index, one for each kind of place. */
    public List<String> patterns() {
        return patterns;
    }

    Quantity<R> quantity(
            String name, Range range, Function<R, EnteredQuantity> get, BiFunction<R, EnteredQuantity, R> with) {
        return quantity(name, range.nameKey(), RangeChoice.always(range), get, with);
    }

    Quantity<R> quantity(
            String name,
            String labelKey,
            RangeChoice range,
            Function<R, EnteredQuantity> get,
            BiFunction<R, EnteredQuantity, R> with) {
        return new Quantity<>(this, new Entry.Component<>(name, labelKey, get, with), range, false, Entry.Need.NO);
    }

    Quantity<R> quantity(
            String name,
            String labelKey,
            Range range,
            Function<R, EnteredQuantity> get,
            BiFunction<R, EnteredQuantity, R> with) {
        return quantity(name, labelKey, RangeChoice.always(range), get, with);
    }

    QuantityList<R> quantities(
            String name,
            String labelKey,
            RangeChoice range,
            Function<R, List<EnteredQuantity>> get,
            BiFunction<R, List<EnteredQuantity>, R> with) {
        return new QuantityList<>(this, new Entry.Component<>(name, labelKey, get, with), range, false, Entry.Need.NO);
    }

    QuantityList<R> quantities(
            String name,
            String labelKey,
            Range range,
            Function<R, List<EnteredQuantity>> get,
            BiFunction<R, List<EnteredQuantity>, R> with) {
        return quantities(name, labelKey, RangeChoice.always(range), get, with);
    }

    QuantityMap<R> byLever(
            String name,
            Range range,
            Function<R, Map<String, EnteredQuantity>> get,
            BiFunction<R, Map<String, EnteredQuantity>, R> with) {
        return new QuantityMap<>(
                this, new Entry.Component<>(name, range.nameKey(), get, with), RangeChoice.always(range));
    }

    Text<R> text(String name, String labelKey, Function<R, String> get, BiFunction<R, String, R> with) {
        return new Text<>(this, new Entry.Component<>(name, labelKey, get, with), false, Entry.Need.NO);
    }

    Text<R> date(String name, String labelKey, Function<R, String> get, BiFunction<R, String, R> with) {
        return new Text<>(this, new Entry.Component<>(name, labelKey, get, with), true, Entry.Need.NO);
    }

    <E extends Enum<E>> Choice<R, E> choice(
            String name, String labelKey, Class<E> type, Function<R, E> get, BiFunction<R, E, R> with) {
        return new Choice<>(
                this, new Entry.Component<>(name, labelKey, get, with), Choice.answers(type), Entry.Need.NO);
    }

    <I> Rows<R, I> rows(
            String name, String labelKey, I blank, Function<R, List<I>> get, BiFunction<R, List<I>, R> with) {
        return new Rows<>(this, new Entry.Component<>(name, labelKey, get, with), blank, Entry.Need.NO);
    }
}
