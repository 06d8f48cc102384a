package org.evenfall.setup.entry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.Typed;
import org.jspecify.annotations.Nullable;

/** Immutable copies in which what is missing in a file counts as not yet typed. */
final class Lists {

    private Lists() {}

    static <T> List<T> of(@Nullable List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }

    static List<Typed> typed(@Nullable List<Typed> list) {
        if (list == null) {
            return List.of();
        }
        List<Typed> copy = new ArrayList<>();
        for (Typed typed : list) {
            copy.add(Typed.orEmpty(typed));
        }
        return Collections.unmodifiableList(copy);
    }

    /** Keeps the order of the file. */
    static Map<String, Typed> map(@Nullable Map<String, Typed> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
