package org.evenfall.setup;

import org.evenfall.setup.entry.Setup;

/** Entries in, one immutable assessment out. Pure: the same setup gives the same assessment. */
public final class Assessor {

    private Assessor() {}

    @SuppressWarnings("DoNotCallSuggester")
    public static Assessment assess(Setup setup) {
        throw new UnsupportedOperationException("not yet built");
    }
}
