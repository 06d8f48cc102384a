package org.evenfall.setup.path;

import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A record within a record that a setup may have several times, for example the settings of a tray test.
 *
 * @param <R> the outer record
 * @param <U> the record within it
 */
public final class Nested<R, U> {

    private final Part<U> part;
    private final String name;
    private final Function<R, U> getter;
    private final BiFunction<R, U, R> wither;

    Nested(Part<R> outer, String name, Function<R, U> getter, BiFunction<R, U, R> wither) {
        this.part = outer.part(name, getter, wither);
        this.name = name;
        this.getter = getter;
        this.wither = wither;
    }

    /** The inner record, wherever a setup has it. */
    public Part<U> part() {
        return part;
    }

    /** Its place in the outer record that is at a place. */
    public EntryPath<U> at(EntryPath<R> outer) {
        return outer.then(name, getter, wither);
    }
}
