package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Typed;
import org.evenfall.setup.entry.ReferenceEntry;

/** Which tested products are listed and in which order: places in the library, for it keeps the order they came in. */
enum LibraryOrder {
    AS_ENTERED((one, other) -> 0),
    NAME(Comparator.comparing(entry -> entry.name().toLowerCase(Locale.ROOT))),
    WIDTH(Comparator.comparingDouble(entry -> number(entry.width()))),
    DENSITY(Comparator.comparingDouble(entry -> number(entry.bulkDensity())));

    private final Comparator<ReferenceEntry> order;

    LibraryOrder(Comparator<ReferenceEntry> order) {
        this.order = order;
    }

    /** Places of the entries that hold every word of the search, in this order; entries of no name stay in. */
    List<Integer> places(
            List<ReferenceEntry> library, String search, java.util.function.Function<ReferenceEntry, String> kind) {
        List<Integer> places = new ArrayList<>();
        String[] words = search.strip().toLowerCase(Locale.ROOT).split("\\s+", -1);
        for (int i = 0; i < library.size(); i++) {
            ReferenceEntry entry = library.get(i);
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
        places.sort((one, other) -> order.compare(library.get(one), library.get(other)));
        return places;
    }

    /** A number to sort by; what cannot be read comes last. */
    private static double number(Typed typed) {
        return NumberText.read(typed.text()) instanceof NumberReading.Value value ? value.value() : Double.MAX_VALUE;
    }
}
