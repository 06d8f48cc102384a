package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.evenfall.setup.entry.Setup;

/**
 * One place in a setup: how to look at it and how to put another value there.
 *
 * @param <T> what stands there
 */
final class EntryPath<T> {

    private final Function<Setup, T> look;
    private final BiFunction<Setup, T, Setup> put;

    private EntryPath(Function<Setup, T> look, BiFunction<Setup, T, Setup> put) {
        this.look = look;
        this.put = put;
    }

    static <T> EntryPath<T> of(Function<Setup, T> look, BiFunction<Setup, T, Setup> put) {
        return new EntryPath<>(look, put);
    }

    T get(Setup setup) {
        return look.apply(setup);
    }

    Setup set(Setup setup, T value) {
        return put.apply(setup, value);
    }

    /** A place within this place. */
    <U> EntryPath<U> then(Function<T, U> inner, BiFunction<T, U, T> with) {
        return new EntryPath<>(
                setup -> inner.apply(get(setup)), (setup, value) -> set(setup, with.apply(get(setup), value)));
    }

    /** One item of a list; looking beyond its end gives the blank, putting there fills up with blanks. */
    static <R> EntryPath<R> item(EntryPath<List<R>> list, int index, R blank) {
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
