package org.evenfall.wizard;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.evenfall.setup.ReadSetup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.Quantity;

/** The order in which tested products are listed. The library itself keeps the order in which they were entered. */
enum LibraryOrder {
    AS_ENTERED,
    NAME,
    WIDTH,
    DENSITY;

    /** Compares two entries of a library by their index in it. */
    private Comparator<Integer> order(ReadSetup read) {
        List<TestedProductEntry> library = MatchPaths.LIBRARY.get(read.setup());
        return switch (this) {
            case AS_ENTERED -> Comparator.naturalOrder();
            case NAME -> Comparator.comparing(i -> library.get(i).name().toLowerCase(Locale.ROOT));
            case WIDTH -> byNumber(read, MatchPaths.TESTED_WIDTH);
            case DENSITY -> byNumber(read, MatchPaths.TESTED_BULK_DENSITY);
        };
    }

    /** By a number as it was read, whatever unit it was typed in; what cannot be read comes last. */
    private static Comparator<Integer> byNumber(ReadSetup read, Quantity<TestedProductEntry> entry) {
        return Comparator.comparing(
                i -> read.numbers().get(entry.at(MatchPaths.LIBRARY.item(i)).pointer()),
                Comparator.nullsLast(Comparator.naturalOrder()));
    }

    /**
     * Indices in the library of the entries that contain every word of the search, in this order.
     *
     * @param read the setup with the library
     * @param kind the kind of product in words, which is searched too
     */
    List<Integer> places(ReadSetup read, String search, Function<TestedProductEntry, String> kind) {
        List<TestedProductEntry> library = MatchPaths.LIBRARY.get(read.setup());
        String[] words = search.strip().toLowerCase(Locale.ROOT).split("\\s+", -1);
        return IntStream.range(0, library.size())
                .filter(i -> containsAll(library.get(i), kind, words))
                .boxed()
                .sorted(order(read))
                .toList();
    }

    private static boolean containsAll(
            TestedProductEntry entry, Function<TestedProductEntry, String> kind, String[] words) {
        String text = String.join(
                        " ",
                        entry.id(),
                        entry.name(),
                        kind.apply(entry),
                        entry.source(),
                        entry.width().text())
                .toLowerCase(Locale.ROOT);
        return Arrays.stream(words).allMatch(text::contains);
    }
}
