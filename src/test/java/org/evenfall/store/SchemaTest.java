package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemaTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static JsonNode schema() throws Exception {
        try (InputStream in = SchemaTest.class.getResourceAsStream("/org/evenfall/setup.schema.json")) {
            return MAPPER.readTree(in);
        }
    }

    private static JsonSchema validator() throws Exception {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema());
    }

    @ParameterizedTest
    @ValueSource(strings = {"machine.json", "setup.json", "unfinished.json"})
    void theDemoIsValidBeforeAndAfterARoundTrip(String name) throws Exception {
        String text = Files.readString(Path.of("demo", name));
        assertThat(validator().validate(MAPPER.readTree(text))).isEmpty();
        SetupJson json = new SetupJson();
        SetupFile file = json.read(text, name);
        String again = json.write(file);
        assertThat(validator().validate(MAPPER.readTree(again))).isEmpty();
        assertThat(json.read(again, name).setup()).isEqualTo(file.setup());
        assertThat(MAPPER.readTree(again).get("note"))
                .isEqualTo(MAPPER.readTree(text).get("note"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"evenfall\":2}",
                "{\"evenfall\":1,\"start\":{\"drivingPattern\":\"UP\"}}",
                "{\"evenfall\":1,\"product\":{\"containerFull\":\"1 kg\"}}",
                "{\"evenfall\":1,\"yard\":{\"checks\":[{}]}}"
            })
    void whatTheReaderRefusesTheSchemaRefuses(String text) throws Exception {
        assertThat(validator().validate(MAPPER.readTree(text))).isNotEmpty();
    }

    /** The schema cannot drift from the records: every entry and every word of every choice stands in it. */
    @Test
    void everyEntryIsDescribed() throws Exception {
        JsonNode schema = schema();
        check(Setup.class, schema, schema, new HashSet<>());
    }

    private static void check(Class<?> type, JsonNode object, JsonNode schema, Set<Class<?>> seen) {
        if (!seen.add(type)) {
            return;
        }
        for (RecordComponent component : type.getRecordComponents()) {
            JsonNode property = object.at("/properties/" + component.getName());
            assertThat(property.isMissingNode())
                    .as(type.getSimpleName() + "." + component.getName())
                    .isFalse();
            assertThat(property.path("description").asText()).isNotBlank();
            Class<?> inner = inner(component.getGenericType());
            if (inner.isEnum()) {
                JsonNode words = property.has("enum") ? property.get("enum") : property.at("/items/enum");
                assertThat(words)
                        .map(JsonNode::asText)
                        .containsExactly(Arrays.stream(inner.getEnumConstants())
                                .map(Object::toString)
                                .toArray(String[]::new));
            } else if (inner.isRecord() && inner.getPackageName().endsWith(".entry")) {
                check(inner, schema.at("/$defs/" + inner.getSimpleName()), schema, seen);
            }
        }
    }

    private static Class<?> inner(Type type) {
        if (type instanceof ParameterizedType list) {
            return (Class<?>) list.getActualTypeArguments()[list.getActualTypeArguments().length - 1];
        }
        return (Class<?>) type;
    }
}
