package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.evenfall.quantity.EnteredQuantity;
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
        Setup file = json.read(text, name);
        String again = json.write(file);
        assertThat(validator().validate(MAPPER.readTree(again))).isEmpty();
        assertThat(json.read(again, name)).isEqualTo(file);
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

    @Test
    void aRandomSetupIsValid() throws Exception {
        SetupJson json = new SetupJson();
        JsonSchema validator = validator();
        Random random = new Random(1952);
        for (int i = 0; i < 100; i++) {
            String text = json.write(EntryTypes.random(Setup.class, random));
            assertThat(validator.validate(MAPPER.readTree(text))).as(text).isEmpty();
        }
    }

    @Test
    void unknownKeysAreAllowedEverywhere() throws Exception {
        assertThat(schema().findValues("additionalProperties"))
                .as("only the levers, whose keys are names")
                .hasSize(1)
                .allMatch(JsonNode::isObject);
        assertThat(schema().findValues("unevaluatedProperties")).isEmpty();
    }

    /** The schema and the records have the same entries, in the same order, with the same choices; each is described. */
    @Test
    void theSchemaDescribesEveryEntryAndNoOther() throws Exception {
        JsonNode schema = schema();
        Set<String> described = new HashSet<>(Set.of("quantity"));
        for (Class<? extends Record> type : EntryTypes.all()) {
            described.add(type.getSimpleName());
            JsonNode object = type == Setup.class ? schema : schema.at("/$defs/" + type.getSimpleName());
            assertThat(object.path("description").asText())
                    .as(type.getSimpleName())
                    .isNotBlank();
            List<String> keys = new ArrayList<>(
                    EntryTypes.known(type).stream().map(EntriesModule::key).toList());
            if (type == Setup.class) {
                keys.add(0, "evenfall");
            }
            assertThat(object.get("properties").fieldNames())
                    .toIterable()
                    .as(type.getSimpleName())
                    .containsExactlyElementsOf(keys);
            for (RecordComponent component : EntryTypes.known(type)) {
                JsonNode property = object.at("/properties/" + EntriesModule.key(component));
                assertThat(property.path("description").asText())
                        .as(type.getSimpleName() + "." + component.getName())
                        .hasSizeGreaterThan(3);
                checkType(component, property);
            }
        }
        described.remove("Setup");
        assertThat(schema.get("$defs").fieldNames()).toIterable().containsExactlyInAnyOrderElementsOf(described);
    }

    private static void checkType(RecordComponent component, JsonNode property) {
        Class<?> inner = EntryTypes.inner(component.getGenericType());
        JsonNode value = component.getType() == List.class
                ? property.get("items")
                : component.getType() == Map.class ? property.get("additionalProperties") : property;
        if (inner.isEnum()) {
            assertThat(value.get("enum"))
                    .as(component.toString())
                    .map(JsonNode::asText)
                    .containsExactly(Arrays.stream(inner.getEnumConstants())
                            .map(Object::toString)
                            .toArray(String[]::new));
        } else if (EntryTypes.isEntries(inner)) {
            assertThat(value.path("$ref").asText()).isEqualTo("#/$defs/" + inner.getSimpleName());
        } else if (inner == EnteredQuantity.class) {
            assertThat(value.path("$ref").asText()).as(component.toString()).isEqualTo("#/$defs/quantity");
        } else {
            assertThat(value.path("type").asText())
                    .as(component.toString())
                    .isEqualTo(inner == int.class ? "integer" : "string");
        }
    }
}
