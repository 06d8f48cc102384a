package org.evenfall.setup.path;

import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.evenfall.setup.entry.Setup;

/**
 * One entry: a component of an entries record, wherever that record is in a setup.
 *
 * @param <R> the record
 * @param <T> the type of the component
 */
public abstract sealed class Entry<R, T> permits Quantity, QuantityList, QuantityMap, Text, Choice, Rows {

    private final Part<R> part;
    private final Component<R, T> component;
    private final Need need;

    Entry(Part<R> part, Component<R, T> component, Need need) {
        this.part = part;
        this.component = component;
        this.need = need;
    }

    /**
     * A component of a record.
     *
     * @param name its key in the setup file
     * @param labelKey bundle key of its label on the screen
     * @param getter gets it from the record
     * @param wither the record with another value in its place
     * @param isPrivate a name or a price, which a hall need not see
     */
    record Component<R, T>(
            String name, String labelKey, Function<R, T> getter, BiFunction<R, T, R> wither, boolean isPrivate) {

        Component(String name, String labelKey, Function<R, T> getter, BiFunction<R, T, R> wither) {
            this(name, labelKey, getter, wither, false);
        }

        Component<R, T> keptPrivate() {
            return new Component<>(name, labelKey, getter, wither, true);
        }
    }

    /**
     * Whether the card needs an entry.
     *
     * @param forCard the card needs it, always or under a condition that the assessment of its step knows
     * @param missingKey bundle key of the finding while nothing is typed; empty where the assessment of its step decides
     */
    record Need(boolean forCard, String missingKey) {
        static final Need NO = new Need(false, "");
        static final Need BY_ASSESSMENT = new Need(true, "");

        static Need always(String missingKey) {
            return new Need(true, missingKey);
        }

        static Need asked(String openKey) {
            return new Need(false, openKey);
        }
    }

    /** The record it belongs to. */
    public final Part<R> part() {
        return part;
    }

    /** Its key in the setup file. */
    public final String name() {
        return component.name();
    }

    /** Bundle key of its label on the screen. */
    public final String labelKey() {
        return component.labelKey();
    }

    /** Whether the card needs it, always or under a condition. */
    public final boolean neededForCard() {
        return need.forCard();
    }

    /** Bundle key of the finding while nothing is typed; empty when none follows from this entry alone. */
    public final String missingKey() {
        return need.missingKey();
    }

    /** Whether it is a name or a price, which can be hidden from others who look at the screen. */
    public final boolean isPrivate() {
        return component.isPrivate();
    }

    /** Its place in the record that is at a place. */
    public final EntryPath<T> at(EntryPath<R> record) {
        return record.then(component.name(), component.getter(), component.wither());
    }

    /**
     * Its place, for an entry that a setup has once.
     *
     * @throws IllegalStateException when its record is an item of a list or is used at several places
     */
    public final EntryPath<T> path() {
        return at(part.only());
    }

    /** Its JSON pointer, for an entry that a setup has once. */
    public final String pointer() {
        return path().pointer();
    }

    /** What is typed, for an entry that a setup has once. */
    public final T get(Setup setup) {
        return path().get(setup);
    }

    /** Every place where a setup has this entry. */
    public final Stream<EntryPath<T>> places(Setup setup) {
        return part.places(setup).map(this::at);
    }

    /** JSON pointers with {@code *} for any index, one for each kind of place. */
    public final List<String> patterns() {
        return part.patterns().stream()
                .map(pattern -> pattern + "/" + component.name())
                .toList();
    }

    /** Whether nothing is typed or chosen. */
    public abstract boolean isBlank(T value);

    final Component<R, T> component() {
        return component;
    }

    @Override
    public final String toString() {
        return Objects.toString(patterns());
    }
}
