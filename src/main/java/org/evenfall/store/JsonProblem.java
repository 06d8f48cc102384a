package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.util.Arrays;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Quoted;

/** Where in a setup file a value is wrong, and what was expected there, in words without Java names. */
final class JsonProblem {

    private JsonProblem() {}

    /** JSON pointer (RFC 6901) of the value. */
    static String pointer(JsonMappingException mapping) {
        StringBuilder pointer = new StringBuilder();
        for (JsonMappingException.Reference step : mapping.getPath()) {
            pointer.append('/')
                    .append(
                            step.getFieldName() == null
                                    ? Integer.toString(step.getIndex())
                                    : step(step.getFieldName()));
        }
        return pointer.toString();
    }

    /** A key as a step of a JSON pointer. */
    static String step(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }

    /** What is wrong, in one line. */
    static String problem(JsonMappingException mapping) {
        if (mapping instanceof InvalidFormatException wrong
                && wrong.getTargetType().isEnum()) {
            return Quoted.of(String.valueOf(wrong.getValue())) + " is not " + expected(wrong.getTargetType());
        }
        if (mapping instanceof MismatchedInputException wrong && wrong.getTargetType() != null) {
            return "expected " + expected(wrong.getTargetType());
        }
        return String.valueOf(mapping.getOriginalMessage()).lines().findFirst().orElse("cannot be read");
    }

    /** What a value of this type is written as. */
    static String expected(Class<?> type) {
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
}
