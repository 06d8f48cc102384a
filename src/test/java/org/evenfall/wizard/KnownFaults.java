package org.evenfall.wizard;

import java.util.List;

/** Faults of the layout that are known, each with the reason why it is not mended. */
final class KnownFaults {

    private static final String ENDLESS = "a list without limit, with as many rows as nobody has";

    private static final String WIDE = "a table of tested products, whose names have no limit";
    private static final String ENDLESS_WORDS = "a reference point whose name fills four lines; the demo fits";
    private static final String ALL_FAILED = "every part of a machine failed at once";

    private static final String TUBES = "trays read by the height in tubes, whose bore is asked too; the demo fits";
    private static final String LEVERS = "a machine with six levers; the demo fits";
    private static final String EVERY_ANSWER = "every answer of a setup is a list without limit";
    private static final String PAGES = "the pages of a card are one below the other";

    private KnownFaults() {}

    /** Where and what, both regular expressions, and why. */
    private record Known(String prompts, String fault, String reason) {}

    private static final List<Known> ALL = List.of(
            new Known("0[adg]|1[fg]|2[abc]|4a|7d", "vertical scroll bar.*", ENDLESS),
            new Known("2b", "horizontal scroll bar.*", WIDE),
            new Known("3e", "vertical scroll bar.*", ALL_FAILED),
            new Known("4b", "vertical scroll bar.*", ENDLESS_WORDS),
            new Known("6a", "vertical scroll bar.*", TUBES),
            new Known("6b", "vertical scroll bar.*", LEVERS),
            new Known("6b", ".*rail-7.*Test 2 was driven.*overlap.*", ENDLESS_WORDS),
            new Known("7a", "vertical scroll bar in scroll-pane middle.*", EVERY_ANSWER),
            new Known("7[abc]", "vertical scroll bar in scroll-pane preview.*", PAGES));

    /** Whether a fault of a prompt is one of them. */
    static boolean known(String prompt, String fault) {
        return ALL.stream().anyMatch(known -> prompt.matches(known.prompts()) && fault.matches(known.fault()));
    }
}
