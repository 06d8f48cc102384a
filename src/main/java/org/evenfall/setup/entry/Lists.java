package org.evenfall.setup.entry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.jspecify.annotations.Nullable;

/** Immutable copies in which what is missing in a file counts as not yet typed. */
final class Lists {

    private Lists() {}

    static <T> List<T> of(@Nullable List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }

    static List<EnteredQuantity> typed(@Nullable List<EnteredQuantity> list) {
        if (list == null) {
            return List.of();
        }
        List<EnteredQuantity> copy = new ArrayList<>();
        for (EnteredQuantity typed : list) {
            copy.add(EnteredQuantity.orEmpty(typed));
        }
        return Collections.unmodifiableList(copy);
    }

    /** Keeps the order of the file. */
    static Map<String, EnteredQuantity> map(@Nullable Map<String, EnteredQuantity> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
