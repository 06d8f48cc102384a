package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.EntryValue;
import org.evenfall.setup.FieldSpec;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.TestedProductEntry;

/** The order in which tested products are listed. The library itself keeps the order in which they were entered. */
enum LibraryOrder {
    AS_ENTERED,
    NAME,
    WIDTH,
    DENSITY;

    private Comparator<TestedProductEntry> order() {
        return switch (this) {
            // every entry equals every other: a stable sort leaves them as they were entered
            case AS_ENTERED -> Comparator.comparingInt(entry -> 0);
            case NAME -> Comparator.comparing(entry -> entry.name().toLowerCase(Locale.ROOT));
            case WIDTH -> Comparator.comparingDouble(entry -> value(entry.width(), Fields.WORKING_WIDTH));
            case DENSITY -> Comparator.comparingDouble(entry -> value(entry.bulkDensity(), Fields.BULK_DENSITY));
        };
    }

    /**
     * Indices in the library of the entries that contain every word of the search, in this order.
     *
     * @param kind the kind of product in words, which is searched too
     */
    List<Integer> places(List<TestedProductEntry> library, String search, Function<TestedProductEntry, String> kind) {
        List<Integer> places = new ArrayList<>();
        String[] words = search.strip().toLowerCase(Locale.ROOT).split("\\s+", -1);
        for (int i = 0; i < library.size(); i++) {
            TestedProductEntry entry = library.get(i);
            String text = String.join(
                            " ",
                            entry.id(),
                            entry.name(),
                            kind.apply(entry),
                            entry.source(),
                            entry.width().text())
                    .toLowerCase(Locale.ROOT);
            boolean all = true;
            for (String word : words) {
                all &= text.contains(word);
            }
            if (all) {
                places.add(i);
            }
        }
        places.sort(Comparator.comparing(library::get, order()));
        return places;
    }

    /** A value to sort by, whatever unit it was typed in; what cannot be read comes last. */
    private static double value(EnteredQuantity typed, FieldSpec spec) {
        return EntryValue.of(typed, spec).orElse(Double.POSITIVE_INFINITY);
    }
}
