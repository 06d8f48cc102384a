package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.setup.entry.TestedProductEntry;

/** Which tested products are listed and in which order: places in the library, for it keeps the order they came in. */
enum LibraryOrder {
    AS_ENTERED,
    NAME,
    WIDTH,
    DENSITY;

    private Comparator<TestedProductEntry> order() {
        return switch (this) {
            // every entry equals every other: a stable sort leaves them as they came
            case AS_ENTERED -> Comparator.comparingInt(entry -> 0);
            case NAME -> Comparator.comparing(entry -> entry.name().toLowerCase(Locale.ROOT));
            case WIDTH -> Comparator.comparingDouble(entry -> number(entry.width()));
            case DENSITY -> Comparator.comparingDouble(entry -> number(entry.bulkDensity()));
        };
    }

    /** Places of the entries that hold every word of the search, in this order; entries of no name stay in. */
    List<Integer> places(
            List<TestedProductEntry> library,
            String search,
            java.util.function.Function<TestedProductEntry, String> kind) {
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

    /** A number to sort by; what cannot be read comes last. */
    private static double number(EnteredQuantity typed) {
        return NumberText.read(typed.text()) instanceof NumberReading.Value value ? value.value() : Double.MAX_VALUE;
    }
}
