package org.evenfall.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.deser.ResolvableDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.setup.entry.Blank;
import org.evenfall.setup.entry.UnknownKeys;
import org.jspecify.annotations.Nullable;

/**
 * Reads one record of entries. A key that is absent or {@code null} is not yet typed; a key that no component has is
 * kept with the record.
 */
final class EntriesDeserializer extends StdDeserializer<Record> implements ResolvableDeserializer {

    private static final long serialVersionUID = 1;

    private static final JsonFactory PLAIN = new JsonFactory();

    private final Class<? extends Record> type;

    /** Key in the file to the place among the components; without that of the unknown keys. */
    private final transient Map<String, Integer> places = new LinkedHashMap<>();

    /** What each component is while nothing is typed. */
    private final transient @Nullable Object[] blank;

    private final transient List<JsonDeserializer<Object>> readers = new ArrayList<>();

    EntriesDeserializer(Class<? extends Record> type) {
        super(type);
        this.type = type;
        List<RecordComponent> components = Blank.components(type);
        this.blank = new @Nullable Object[components.size()];
        for (int i = 0; i < blank.length; i++) {
            RecordComponent component = components.get(i);
            blank[i] = Blank.value(component.getType());
            if (component.getType() != UnknownKeys.class) {
                places.put(EntriesModule.key(component), i);
            }
        }
    }

    @Override
    public boolean isCachable() {
        return true;
    }

    @Override
    public void resolve(DeserializationContext context) throws JsonMappingException {
        readers.clear();
        for (RecordComponent component : Blank.components(type)) {
            readers.add(context.findRootValueDeserializer(
                    context.getTypeFactory().constructType(component.getGenericType())));
        }
    }

    /** An item {@code null} of a list is an item in which nothing is typed. */
    @Override
    public Record getNullValue(DeserializationContext context) throws JsonMappingException {
        return build(context, blank.clone(), Map.of());
    }

    @Override
    public Record deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        if (!parser.isExpectedStartObjectToken()) {
            return (Record) context.handleUnexpectedToken(type, parser);
        }
        @Nullable Object[] values = blank.clone();
        Map<String, String> unknown = new LinkedHashMap<>();
        for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
            Integer place = places.get(key);
            JsonToken token = parser.nextToken();
            if (place == null) {
                unknown.put(key, json(parser));
            } else if (token != JsonToken.VALUE_NULL) {
                try {
                    values[place] = readers.get(place).deserialize(parser, context);
                } catch (IOException wrong) {
                    throw JsonMappingException.wrapWithPath(wrong, type, key);
                }
            }
        }
        return build(context, values, unknown);
    }

    /** The text of the value at which the parser is. No second tree of it is made. */
    private static String json(JsonParser parser) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = PLAIN.createGenerator(text)) {
            json.copyCurrentStructure(parser);
        }
        return text.toString();
    }

    private Record build(DeserializationContext context, @Nullable Object[] values, Map<String, String> unknown)
            throws JsonMappingException {
        for (Map.Entry<String, Integer> place : places.entrySet()) {
            if (values[place.getValue()] == null) {
                Class<?> wanted = Blank.components(type).get(place.getValue()).getType();
                throw JsonMappingException.from(
                        context, "\"" + place.getKey() + "\" is missing; expected " + JsonProblem.expected(wanted));
            }
        }
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof UnknownKeys) {
                values[i] = unknown.isEmpty() ? UnknownKeys.NONE : new UnknownKeys(unknown);
            }
        }
        return Blank.build(type, values);
    }
}
