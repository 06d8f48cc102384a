package org.evenfall.setup.path;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;

/** Names and prices: the entries that can be hidden while others look at the screen. Each says so where it is defined. */
public final class PrivateEntries {

    /** What is shown in place of a name. */
    public static final String DOTS = "\u2022\u2022\u2022";

    /** A shorter name may be part of any word. */
    private static final int LEAST_LETTERS = 3;

    private static final List<Entry<?, ?>> ALL =
            Entries.ALL.stream().filter(Entry::isPrivate).toList();

    private static final Set<String> PATTERNS =
            ALL.stream().flatMap(entry -> entry.patterns().stream()).collect(Collectors.toUnmodifiableSet());

    private PrivateEntries() {}

    /** Whether the entry at a place of the setup file is one of them. */
    public static boolean at(String pointer) {
        return PATTERNS.contains(pointer.replaceAll("/\\d+(?=/|$)", "/*"));
    }

    /** The setup with dots for names and without prices. */
    public static Setup hidden(Setup setup) {
        Setup next = withoutPrices(setup);
        for (EntryPath<String> name : names(setup).toList()) {
            next = name.set(next, DOTS);
        }
        return next;
    }

    /** The setup without prices, so that nothing follows from them. */
    public static Setup withoutPrices(Setup setup) {
        Setup next = setup;
        for (Entry<?, ?> entry : ALL) {
            if (entry instanceof Quantity<?> price) {
                for (EntryPath<EnteredQuantity> place : price.places(setup).toList()) {
                    next = place.set(next, EnteredQuantity.EMPTY);
                }
            }
        }
        return next;
    }

    /** A sentence with dots in place of the names of a setup. */
    public static String masked(Setup setup, String sentence) {
        return names(setup)
                .map(place -> place.get(setup))
                .filter(name -> name.length() >= LEAST_LETTERS)
                .reduce(sentence, (text, name) -> text.replace(name, DOTS));
    }

    /** Places of the names that are typed. */
    private static Stream<EntryPath<String>> names(Setup setup) {
        return ALL.stream()
                .flatMap(entry -> entry instanceof Text<?> text ? text.places(setup) : Stream.empty())
                .filter(place -> !place.get(setup).isBlank());
    }
}
