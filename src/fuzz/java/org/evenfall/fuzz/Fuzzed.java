package org.evenfall.fuzz;

import java.util.Objects;

/** What the fuzzer calls, by these names: first with the name of a target, then with one input after another. */
public final class Fuzzed {

    private static Targets.Target target = input -> {};

    private Fuzzed() {}

    /** Chooses the target. */
    public static void fuzzerInitialize(String[] arguments) {
        target = Objects.requireNonNull(Targets.ALL.get(arguments[0]), arguments[0]);
    }

    /** Takes one input. */
    public static void fuzzerTestOneInput(byte[] input) throws Exception {
        target.take(input);
    }
}
