package org.evenfall.setup.path;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.evenfall.finding.Step;
import org.evenfall.setup.entry.Setup;

/**
 * One place in a setup: its JSON pointer in the setup file, how to get what is there and how to put another value there.
 *
 * @param <T> the type of what is there
 */
public final class EntryPath<T> {

    private final String pointer;
    private final Step step;
    private final Function<Setup, T> getter;
    private final BiFunction<Setup, T, Setup> wither;

    private EntryPath(String pointer, Step step, Function<Setup, T> getter, BiFunction<Setup, T, Setup> wither) {
        this.pointer = pointer;
        this.step = step;
        this.getter = getter;
        this.wither = wither;
    }

    /**
     * A top-level part of a setup.
     *
     * @param name its key in the setup file
     * @param step the step that asks for it
     * @param getter gets it from a setup
     * @param wither a setup with another value in its place
     */
    static <T> EntryPath<T> top(String name, Step step, Function<Setup, T> getter, BiFunction<Setup, T, Setup> wither) {
        return new EntryPath<>("/" + name, step, getter, wither);
    }

    /** JSON pointer (RFC 6901) of this place in the setup file, for example {@code /machine/levers/0/label}. */
    public String pointer() {
        return pointer;
    }

    /** The step that asks for it. */
    public Step step() {
        return step;
    }

    /** What is at this place of a setup. */
    public T get(Setup setup) {
        return getter.apply(setup);
    }

    /** The setup with another value at this place. */
    public Setup set(Setup setup, T value) {
        return wither.apply(setup, value);
    }

    /**
     * A place within this place.
     *
     * @param name its key in the setup file
     * @param inner gets it from what is here
     * @param with what is here with another value in its place
     */
    public <U> EntryPath<U> then(String name, Function<T, U> inner, BiFunction<T, U, T> with) {
        return new EntryPath<>(
                pointer + "/" + escaped(name),
                step,
                setup -> inner.apply(get(setup)),
                (setup, value) -> set(setup, with.apply(get(setup), value)));
    }

    /** The same place read or written in another way, for example with a default where nothing is typed. */
    public <U> EntryPath<U> as(Function<T, U> inner, BiFunction<T, U, T> with) {
        return new EntryPath<>(
                pointer,
                step,
                setup -> inner.apply(get(setup)),
                (setup, value) -> set(setup, with.apply(get(setup), value)));
    }

    /**
     * One item of a list. Getting beyond its end gives the blank; setting there fills the list up with blanks.
     *
     * @param index from 0
     * @param blank an item in which nothing is typed
     */
    public static <R> EntryPath<R> item(EntryPath<List<R>> list, int index, R blank) {
        return list.then(
                Integer.toString(index),
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

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    @Override
    public String toString() {
        return pointer;
    }
}
