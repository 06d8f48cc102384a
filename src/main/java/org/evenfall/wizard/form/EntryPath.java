package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.evenfall.setup.entry.Setup;

/**
 * A place in a setup: gets what is there, and gives a setup with another value there.
 *
 * @param <T> type of the value
 */
public final class EntryPath<T> {

    private final Function<Setup, T> getter;
    private final BiFunction<Setup, T, Setup> wither;

    private EntryPath(Function<Setup, T> getter, BiFunction<Setup, T, Setup> wither) {
        this.getter = getter;
        this.wither = wither;
    }

    /** A place by its getter and wither. */
    public static <T> EntryPath<T> of(Function<Setup, T> getter, BiFunction<Setup, T, Setup> wither) {
        return new EntryPath<>(getter, wither);
    }

    /** The value there. */
    public T get(Setup setup) {
        return getter.apply(setup);
    }

    /** The setup with another value there. */
    public Setup set(Setup setup, T value) {
        return wither.apply(setup, value);
    }

    /** A place within this place. */
    public <U> EntryPath<U> then(Function<T, U> inner, BiFunction<T, U, T> with) {
        return new EntryPath<>(
                setup -> inner.apply(get(setup)), (setup, value) -> set(setup, with.apply(get(setup), value)));
    }

    /** One item of a list; beyond its end the blank is got, and setting there fills up with blanks. */
    public static <R> EntryPath<R> item(EntryPath<List<R>> list, int index, R blank) {
        return list.then(
                items -> index < items.size() ? items.get(index) : blank,
                (items, value) -> with(items, index, value, blank));
    }

    private static <R> List<R> with(List<R> items, int index, R value, R blank) {
        List<R> copy = new ArrayList<>(items);
        while (copy.size() <= index) {
            copy.add(blank);
        }
        copy.set(index, value);
        return copy;
    }
}
