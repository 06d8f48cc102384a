package org.evenfall.wizard.form;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is made when it is first asked for, and kept. Two threads may ask: the second waits for the first. */
public final class Lazy<T> implements Supplier<T> {

    private final Supplier<T> maker;
    private @Nullable T made;

    /** @param maker called once, when the thing is first asked for */
    public Lazy(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public synchronized T get() {
        T now = made;
        if (now == null) {
            now = maker.get();
            made = now;
        }
        return now;
    }

    /** The thing if it was made. */
    public synchronized Optional<T> ifMade() {
        return Optional.ofNullable(made);
    }
}
