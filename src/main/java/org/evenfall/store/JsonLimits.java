package org.evenfall.store;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.evenfall.quantity.Quoted;

/** What a JSON text may be at most, so that any text is read or refused soon. Far beyond what a person types. */
final class JsonLimits {

    /** Most items of a list, and keys of an object. */
    static final int MOST_ITEMS = 1000;

    private static final int DEEPEST = 200;
    private static final int MOST_DIGITS = 1000;
    private static final int LONGEST_KEY = 1000;

    /** Farthest power of ten of a number; a double ends at 308. */
    static final int MOST_EXPONENT = 400;

    static final StreamReadConstraints CONSTRAINTS = StreamReadConstraints.builder()
            .maxNestingDepth(DEEPEST)
            .maxNumberLength(MOST_DIGITS)
            .maxNameLength(LONGEST_KEY)
            .build();

    private JsonLimits() {}

    /**
     * The tree of a text that keeps the limits.
     *
     * @throws InputFileException with line and column, or with the place of the value, where it is no JSON object, or a limit
     *     is passed
     */
    static ObjectNode read(ObjectMapper mapper, String text, String name) throws InputFileException {
        if (text.length() > InputText.MOST_BYTES) {
            throw new InputFileException(name, "", "longer than " + InputText.MOST_BYTES / 1_000_000 + " MB");
        }
        try (JsonParser parser = mapper.createParser(text)) {
            try {
                if (!(mapper.readTree(parser) instanceof ObjectNode root)) {
                    throw new InputFileException(name, "", "expected one JSON object");
                }
                new JsonTreeCheck(name).check(root);
                return root;
            } catch (StreamConstraintsException beyond) {
                throw syntax(
                        name,
                        parser.currentLocation(),
                        "nested deeper than " + DEEPEST + ", a number of more than " + MOST_DIGITS
                                + " digits or a key of more than " + LONGEST_KEY + " letters");
            } catch (NumberFormatException endless) {
                throw syntax(
                        name,
                        parser.currentLocation(),
                        "the exponent of this number is beyond the " + MOST_EXPONENT + " allowed");
            } catch (JsonProcessingException wrong) {
                JsonLocation location = wrong.getLocation();
                throw syntax(name, location == null ? parser.currentLocation() : location, wrong.getOriginalMessage());
            }
        } catch (IOException impossible) {
            throw new InputFileException(name, "", "cannot be read as JSON");
        }
    }

    private static InputFileException syntax(String name, JsonLocation at, String problem) {
        return new InputFileException(
                name, "", "not valid JSON at line " + at.getLineNr() + ", column " + at.getColumnNr() + ": " + problem);
    }

    /**
     * The text, when it is not too long.
     *
     * @throws JsonMappingException when it is
     */
    static String atMost(int letters, String text, DeserializationContext context) throws JsonMappingException {
        if (text.length() > letters) {
            throw JsonMappingException.from(
                    context, Quoted.of(text) + " is longer than the " + letters + " letters allowed");
        }
        return text;
    }
}
