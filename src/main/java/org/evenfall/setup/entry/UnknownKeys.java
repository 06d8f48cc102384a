package org.evenfall.setup.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keys of one object of a setup file that this version does not know. They belong to their object and go wherever it
 * goes. Two entries that differ in these keys alone are different entries.
 *
 * @param jsonByKey key to its value as JSON text, in the order of the file
 */
public record UnknownKeys(Map<String, String> jsonByKey) {

    /** No unknown key. */
    public static final UnknownKeys NONE = new UnknownKeys(Map.of());

    /** Copies the map. */
    public UnknownKeys {
        jsonByKey = Collections.unmodifiableMap(new LinkedHashMap<>(jsonByKey));
    }

    /** True where the file has no key that this version does not know. */
    public boolean isEmpty() {
        return jsonByKey.isEmpty();
    }
}
