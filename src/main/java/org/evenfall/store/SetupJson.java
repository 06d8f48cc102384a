package org.evenfall.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.evenfall.quantity.PlainText;
import org.evenfall.quantity.Quoted;
import org.evenfall.setup.entry.Setup;

/** JSON text to a setup and back. The format is published as setup.schema.json. */
public final class SetupJson {

    /** Version of the format written; the only one there is. */
    public static final int VERSION = 1;

    private static final String VERSION_KEY = "evenfall";

    /** Made when it is first used, since many calls read no setup; it does not change, so that all share it. */
    private static final class Format {

        private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                        .streamReadConstraints(JsonLimits.CONSTRAINTS)
                        .build())
                .addModule(new EntriesModule())
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
    }

    /** What reads setups takes a while to make ready; this does it, on whichever thread has time. */
    public void makeReady() {
        try {
            read("{\"" + VERSION_KEY + "\": " + VERSION + "}", "");
        } catch (InputFileException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Mapper of the format; also makes the JSON nodes of other results. */
    public ObjectMapper mapper() {
        return Format.MAPPER;
    }

    /**
     * The setup that a text means. What is absent or {@code null} is not yet typed; keys that this version does not know
     * are kept with their object.
     *
     * @param text the whole JSON text
     * @param name what to call it in a message
     * @throws InputFileException when the text is not JSON, has another version, or a value has the wrong type
     */
    public Setup read(String text, String name) throws InputFileException {
        AnyVersion read = readAnyVersion(text, name);
        if (read.version() != VERSION) {
            throw new InputFileException(
                    name, "/" + VERSION_KEY, "unknown version " + read.version() + "; allowed: " + VERSION);
        }
        return read.setup();
    }

    /**
     * A setup and the version of its file.
     *
     * @param version at least {@link #VERSION}; above it, the setup is what this version understands of the file
     */
    record AnyVersion(Setup setup, int version) {}

    /**
     * The same for a file of a newer program as well, as far as it is understood here: to be looked at, not to be written.
     *
     * @throws InputFileException when the text is not JSON, has no version, or a value has the wrong type
     */
    AnyVersion readAnyVersion(String text, String name) throws InputFileException {
        try {
            ObjectNode root = JsonLimits.read(Format.MAPPER, InputText.withoutMark(text), name);
            JsonNode version = root.remove(VERSION_KEY);
            if (version == null || !version.isInt() || version.intValue() < VERSION) {
                throw new InputFileException(
                        name,
                        "/" + VERSION_KEY,
                        (version == null
                                        ? "missing version"
                                        : "unknown version "
                                                + PlainText.oneLine(version.toString(), Quoted.MOST_LETTERS))
                                + "; allowed: " + VERSION);
            }
            return new AnyVersion(Format.MAPPER.treeToValue(Migrations.apply(root), Setup.class), version.intValue());
        } catch (JsonMappingException mapping) {
            throw new InputFileException(name, JsonProblem.pointer(mapping), JsonProblem.problem(mapping));
        } catch (JsonProcessingException wrong) {
            throw new InputFileException(name, "", "cannot be read: " + wrong.getOriginalMessage());
        }
    }

    /** Pretty-printed text; what is not typed is left out, keys that this version does not know are kept. */
    public String write(Setup setup) {
        ObjectNode root = Format.MAPPER.createObjectNode();
        root.put(VERSION_KEY, VERSION);
        root.setAll((ObjectNode) Format.MAPPER.valueToTree(setup));
        return root.toPrettyString() + "\n";
    }
}
