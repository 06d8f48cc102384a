package org.evenfall.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.UnknownKeys;

/** Writes one record of entries: what is not typed is left out, unknown keys come back where they were. */
final class EntriesSerializer extends StdSerializer<Record> {

    private static final long serialVersionUID = 1;

    /** Keeps every figure of an unknown number. */
    private static final ObjectMapper EXACT =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    EntriesSerializer() {
        super(Record.class);
    }

    @Override
    public void serialize(Record entries, JsonGenerator json, SerializerProvider provider) throws IOException {
        json.writeStartObject();
        for (RecordComponent component : Blank.components(entries.getClass())) {
            Object value = Blank.get(entries, component);
            if (value instanceof UnknownKeys unknown) {
                for (Map.Entry<String, String> key : unknown.jsonByKey().entrySet()) {
                    json.writeFieldName(key.getKey());
                    json.writeTree(EXACT.readTree(key.getValue()));
                }
            } else if (!Blank.isBlank(value)) {
                provider.defaultSerializeField(EntriesModule.key(component), typed(value), json);
            }
        }
        json.writeEndObject();
    }

    /** A map without its blank values; anything else as it is. */
    private static Object typed(Object value) {
        if (!(value instanceof Map<?, ?> map)) {
            return value;
        }
        Map<Object, Object> typed = new LinkedHashMap<>(map);
        typed.values().removeIf(Blank::isBlank);
        return typed;
    }
}
