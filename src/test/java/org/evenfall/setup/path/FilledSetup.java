package org.evenfall.setup.path;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;

/** A setup in which every list has two items and every map one, so that every entry has a place. */
public final class FilledSetup {

    /** Items of each list. */
    public static final int ITEMS = 2;

    private FilledSetup() {}

    /** The setup; nothing is typed in its entries. */
    public static Setup make() {
        Setup setup = Setup.EMPTY;
        for (Entry<?, ?> entry : Entries.ALL) {
            setup = filled(setup, entry);
        }
        return setup;
    }

    private static <R, T> Setup filled(Setup setup, Entry<R, T> entry) {
        Setup next = setup;
        for (EntryPath<T> path : entry.places(setup).toList()) {
            next = path.set(next, filler(entry, path.get(next)));
        }
        return next;
    }

    @SuppressWarnings("unchecked") // the value is of the entry's own type
    private static <T> T filler(Entry<?, T> entry, T now) {
        if (entry instanceof Rows<?, ?> rows) {
            List<Object> items = new ArrayList<>();
            for (int i = 0; i < ITEMS; i++) {
                items.add(rows.blank());
            }
            return (T) items;
        }
        if (entry instanceof QuantityList<?>) {
            return (T) List.of(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);
        }
        return entry instanceof QuantityMap<?> ? (T) Map.of("outer/~vane", EnteredQuantity.EMPTY) : now;
    }

    /** One measured value of a setup: what it is and where it is. */
    public record Place(Measured entry, EntryPath<EnteredQuantity> path) {
        @Override
        public String toString() {
            return path.pointer();
        }
    }

    /** Every measured value that this setup has a place for. */
    public static List<Place> measured() {
        Setup setup = make();
        List<Place> places = new ArrayList<>();
        for (Entry<?, ?> entry : Entries.ALL) {
            if (entry instanceof Quantity<?> quantity) {
                quantity.places(setup).forEach(path -> places.add(new Place(quantity, path)));
            } else if (entry instanceof QuantityList<?> list) {
                list.places(setup).forEach(path -> {
                    for (int i = 0; i < ITEMS; i++) {
                        places.add(new Place(list, QuantityList.item(path, i)));
                    }
                });
            } else if (entry instanceof QuantityMap<?> map) {
                map.places(setup).forEach(path -> places.add(new Place(map, QuantityMap.item(path, "outer/~vane"))));
            }
        }
        return places;
    }
}
