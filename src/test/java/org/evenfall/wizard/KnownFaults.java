package org.evenfall.wizard;

import java.util.List;

/** Faults of the layout that are known, each with the reason why it is not mended. */
final class KnownFaults {

    private static final String OLD_FORM = "old form of steps 5 to 7, replaced soon";
    private static final String ENDLESS = "a list without limit, with as many rows as nobody has";

    private KnownFaults() {}

    /** Where and what, both regular expressions, and why. */
    private record Known(String prompts, String fault, String reason) {}

    private static final List<Known> ALL = List.of();

    /** Whether a fault of a prompt is one of them. */
    static boolean known(String prompt, String fault) {
        return ALL.stream().anyMatch(known -> prompt.matches(known.prompts()) && fault.matches(known.fault()));
    }
}
