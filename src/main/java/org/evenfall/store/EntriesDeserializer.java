package org.evenfall.store;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.UnknownKeys;
import org.jspecify.annotations.Nullable;

/**
 * Reads one record of entries. A key that is absent or {@code null} is not yet typed; a key that no component has is
 * kept with the record.
 */
final class EntriesDeserializer extends StdDeserializer<Record> {

    private static final long serialVersionUID = 1;

    private final Class<? extends Record> type;

    EntriesDeserializer(Class<? extends Record> type) {
        super(type);
        this.type = type;
    }

    @Override
    public boolean isCachable() {
        return true;
    }

    /** An item {@code null} of a list is an item in which nothing is typed. */
    @Override
    public Record getNullValue(DeserializationContext context) throws JsonMappingException {
        return build(context, new LinkedHashMap<>(), UnknownKeys.NONE);
    }

    @Override
    public Record deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        if (!parser.isExpectedStartObjectToken()) {
            return (Record) context.handleUnexpectedToken(type, parser);
        }
        Map<String, Object> typed = new LinkedHashMap<>();
        Map<String, String> unknown = new LinkedHashMap<>();
        for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
            RecordComponent component = component(key);
            JsonToken token = parser.nextToken();
            if (component == null) {
                unknown.put(key, context.readTree(parser).toString());
            } else if (token != JsonToken.VALUE_NULL) {
                typed.put(key, read(parser, context, component));
            }
        }
        return build(context, typed, new UnknownKeys(unknown));
    }

    private Object read(JsonParser parser, DeserializationContext context, RecordComponent component)
            throws IOException {
        JavaType wanted = context.getTypeFactory().constructType(component.getGenericType());
        try {
            return context.readValue(parser, wanted);
        } catch (IOException wrong) {
            throw JsonMappingException.wrapWithPath(wrong, type, EntriesModule.key(component));
        }
    }

    private Record build(DeserializationContext context, Map<String, Object> typed, UnknownKeys unknown)
            throws JsonMappingException {
        RecordComponent[] components = type.getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        for (int i = 0; i < values.length; i++) {
            Class<?> wanted = components[i].getType();
            String key = EntriesModule.key(components[i]);
            values[i] = wanted == UnknownKeys.class
                    ? unknown
                    : typed.containsKey(key) ? typed.get(key) : Blank.value(wanted);
            if (values[i] == null) {
                throw JsonMappingException.from(
                        context, "\"" + key + "\" is missing; expected " + JsonProblem.expected(wanted));
            }
        }
        return Blank.build(type, values);
    }

    private @Nullable RecordComponent component(String key) {
        for (RecordComponent component : type.getRecordComponents()) {
            if (EntriesModule.key(component).equals(key) && component.getType() != UnknownKeys.class) {
                return component;
            }
        }
        return null;
    }
}
