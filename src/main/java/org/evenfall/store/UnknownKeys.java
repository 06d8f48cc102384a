package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Keys of a file that this version does not know: taken out on reading, put back on writing. */
final class UnknownKeys {

    private UnknownKeys() {}

    /** Only what is unknown of a tree; lists keep their places with empty objects between. */
    static JsonNode in(JsonNode tree, JsonNode known) {
        ObjectNode unknown = JsonNodeFactory.instance.objectNode();
        tree.properties().forEach(entry -> {
            String key = entry.getKey();
            JsonNode there = known.get(key);
            if (there == null) {
                if (!key.equals("evenfall")) {
                    unknown.set(key, entry.getValue());
                }
                return;
            }
            JsonNode below = below(entry.getValue(), there);
            if (!below.isEmpty()) {
                unknown.set(key, below);
            }
        });
        return unknown;
    }

    private static JsonNode below(JsonNode tree, JsonNode known) {
        if (tree.isObject() && known.isObject()) {
            return in(tree, known);
        }
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        boolean any = false;
        if (tree.isArray() && known.isArray()) {
            for (int i = 0; i < Math.min(tree.size(), known.size()); i++) {
                JsonNode item = below(tree.get(i), known.get(i));
                any |= !item.isEmpty();
                list.add(item);
            }
        }
        return any ? list : JsonNodeFactory.instance.arrayNode();
    }

    static void addTo(JsonNode target, JsonNode unknown) {
        if (target instanceof ObjectNode object && unknown.isObject()) {
            unknown.properties().forEach(entry -> {
                JsonNode there = object.get(entry.getKey());
                if (there == null) {
                    object.set(entry.getKey(), entry.getValue().deepCopy());
                } else {
                    addTo(there, entry.getValue());
                }
            });
        } else if (target instanceof ArrayNode list && unknown.isArray()) {
            for (int i = 0; i < Math.min(list.size(), unknown.size()); i++) {
                addTo(list.get(i), unknown.get(i));
            }
        }
    }
}
