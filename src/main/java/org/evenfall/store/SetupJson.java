package org.evenfall.store;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.MachineCheckEntries;
import org.evenfall.setup.entry.Setup;

/** JSON text to a {@link SetupFile} and back. The format is published as setup.schema.json. */
public final class SetupJson {

    /** Version of the format written; the only one there is. */
    public static final int VERSION = 1;

    private static final String VERSION_KEY = "evenfall";

    private final ObjectMapper mapper;

    public SetupJson() {
        SimpleModule typed = new SimpleModule()
                .addSerializer(EnteredQuantity.class, new TypedSerializer())
                .addDeserializer(EnteredQuantity.class, new TypedDeserializer());
        mapper = JsonMapper.builder()
                .addModule(typed)
                .addMixIn(Setup.class, FileKeys.class)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
    }

    /** Mapper that knows how values are typed; also used to write assessments. */
    public ObjectMapper mapper() {
        return mapper;
    }

    /**
     * @param text the whole JSON text
     * @param name what to call it in a message
     */
    public SetupFile read(String text, String name) throws SetupFileException {
        try {
            JsonNode tree = mapper.readTree(text);
            if (!(tree instanceof ObjectNode root)) {
                throw new SetupFileException(name, "", "expected one JSON object");
            }
            JsonNode version = root.get(VERSION_KEY);
            if (version == null || !version.isInt() || version.intValue() != VERSION) {
                throw new SetupFileException(
                        name,
                        "/" + VERSION_KEY,
                        (version == null ? "missing version" : "unknown version " + version) + "; allowed: " + VERSION);
            }
            Setup setup = mapper.treeToValue(root, Setup.class);
            return new SetupFile(setup, UnknownKeys.in(root, mapper.valueToTree(setup)));
        } catch (JsonMappingException mapping) {
            throw new SetupFileException(name, pointer(mapping), problem(mapping));
        } catch (JsonProcessingException syntax) {
            throw new SetupFileException(
                    name,
                    "",
                    "not valid JSON at line " + syntax.getLocation().getLineNr() + ", column "
                            + syntax.getLocation().getColumnNr() + ": " + syntax.getOriginalMessage());
        }
    }

    /** Pretty-printed text; what was not typed is left out, keys that this version does not know are kept. */
    public String write(SetupFile file) {
        ObjectNode root = mapper.createObjectNode();
        root.put(VERSION_KEY, VERSION);
        ObjectNode known = mapper.valueToTree(file.setup());
        prune(known);
        root.setAll(known);
        UnknownKeys.addTo(root, file.unknown());
        return root.toPrettyString() + "\n";
    }

    /** Leaves out what was not typed. Items of a list keep their places. */
    private static boolean prune(JsonNode node) {
        if (node instanceof ObjectNode object) {
            for (Iterator<Map.Entry<String, JsonNode>> fields =
                            object.properties().iterator();
                    fields.hasNext(); ) {
                JsonNode value = fields.next().getValue();
                if (prune(value)) {
                    fields.remove();
                }
            }
            return object.isEmpty();
        }
        if (node instanceof ArrayNode array) {
            array.forEach(SetupJson::prune);
            return array.isEmpty();
        }
        return node.isNull()
                || (node.isTextual()
                        && (node.textValue().isEmpty() || node.textValue().equals("UNANSWERED")))
                || (node.isInt() && node.intValue() == 0);
    }

    private static String pointer(JsonMappingException mapping) {
        StringBuilder pointer = new StringBuilder();
        for (JsonMappingException.Reference step : mapping.getPath()) {
            pointer.append('/')
                    .append(
                            step.getFieldName() == null
                                    ? Integer.toString(step.getIndex())
                                    : step.getFieldName().replace("~", "~0").replace("/", "~1"));
        }
        return pointer.toString();
    }

    private static String problem(JsonMappingException mapping) {
        if (mapping instanceof InvalidFormatException wrong
                && wrong.getTargetType().isEnum()) {
            return "\"" + wrong.getValue() + "\" is not one of "
                    + Arrays.toString(wrong.getTargetType().getEnumConstants());
        }
        if (mapping instanceof MismatchedInputException wrong && wrong.getTargetType() != null) {
            return "expected " + expected(wrong.getTargetType());
        }
        return String.valueOf(mapping.getOriginalMessage()).lines().findFirst().orElse("cannot be read");
    }

    private static String expected(Class<?> type) {
        if (type == EnteredQuantity.class) {
            return "a number or a text such as \"28 m\"";
        }
        if (Iterable.class.isAssignableFrom(type)) {
            return "a list";
        }
        if (type == String.class) {
            return "a text";
        }
        if (type == int.class) {
            return "a whole number";
        }
        return type.isEnum() ? "one of " + Arrays.toString(type.getEnumConstants()) : "an object";
    }

    /** Keys of the file whose Java names have changed since; a file keeps its meaning. */
    private interface FileKeys {
        @JsonProperty("yard")
        MachineCheckEntries machineCheck();
    }

    private static final class TypedSerializer extends StdSerializer<EnteredQuantity> {

        TypedSerializer() {
            super(EnteredQuantity.class);
        }

        @Override
        public void serialize(EnteredQuantity value, JsonGenerator json, SerializerProvider provider)
                throws IOException {
            // the unit alone is nothing typed
            json.writeString(value.isBlank() ? "" : value.toString());
        }
    }

    private static final class TypedDeserializer extends StdDeserializer<EnteredQuantity> {

        TypedDeserializer() {
            super(EnteredQuantity.class);
        }

        @Override
        public EnteredQuantity deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            JsonToken token = parser.currentToken();
            if (token == JsonToken.VALUE_STRING) {
                return EnteredQuantity.parse(parser.getText());
            }
            if (token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT) {
                return new EnteredQuantity(unambiguous(parser.getDecimalValue().toPlainString()), Unit.NONE);
            }
            return (EnteredQuantity) context.handleUnexpectedToken(EnteredQuantity.class, parser);
        }

        /** A JSON number has one meaning; its text must not be asked back as a group of thousands. */
        private static String unambiguous(String digits) {
            return NumberText.read(digits) instanceof NumberReading.Ambiguous ? digits + "0" : digits;
        }
    }
}
