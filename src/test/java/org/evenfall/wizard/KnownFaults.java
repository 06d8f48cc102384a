package org.evenfall.wizard;

import java.util.List;

/** Faults of the layout that are known, each with the reason why it is not mended. */
final class KnownFaults {

    private static final String OLD_FORM = "old form of steps 5 to 7, replaced soon";
    private static final String ENDLESS = "a list without limit, with as many rows as nobody has";

    private static final String WIDE = "a table of tested products, whose names have no limit";
    private static final String WALK = "old form: its checks are put right on a prompt of their own soon";
    private static final String NOTES = "notes with sources on the page itself, which go behind the help soon";

    private KnownFaults() {}

    /** Where and what, both regular expressions, and why. */
    private record Known(String prompts, String fault, String reason) {}

    private static final List<Known> ALL = List.of(
            new Known("[5-7].", ".*sticks out.*|.*overlap.*|horizontal scroll bar.*", OLD_FORM),
            new Known("0[adg]|1[fg]|2[abc]|4a", "vertical scroll bar.*", ENDLESS),
            new Known("2[bc]", "horizontal scroll bar.*", WIDE),
            new Known("3a", "vertical scroll bar.*", WALK),
            new Known("4b", "vertical scroll bar.*", NOTES),
            new Known("1[bc]", ".*(Nitrogen loss|Source: |Opened bag).*(sticks out|overlap).*", NOTES));

    /** Whether a fault of a prompt is one of them. */
    static boolean known(String prompt, String fault) {
        return ALL.stream().anyMatch(known -> prompt.matches(known.prompts()) && fault.matches(known.fault()));
    }
}
