package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import org.evenfall.quantity.Quoted;

/** Looks for values in a tree that could not be computed with or written again, under keys of any name. */
final class JsonTreeCheck {

    private final String name;

    /** Steps from the root to the value; joined only for a message, since a place can be long. */
    private final Deque<String> steps = new ArrayDeque<>();

    /** @param name what to call the file in a message */
    JsonTreeCheck(String name) {
        this.name = name;
    }

    /** @throws InputFileException with the place of the first such value */
    void check(JsonNode node) throws InputFileException {
        if (node.size() > JsonLimits.MOST_ITEMS) {
            throw problem(node.size() + " items; allowed are " + JsonLimits.MOST_ITEMS);
        }
        if (node.isBigDecimal()) {
            checkNumber(node.decimalValue());
        }
        if (node.isTextual()) {
            checkLetters(node.textValue());
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            checkChild(Integer.toString(i), node.get(i));
        }
        for (Map.Entry<String, JsonNode> child : node.properties()) {
            checkLetters(child.getKey());
            checkChild(child.getKey(), child.getValue());
        }
    }

    private void checkChild(String step, JsonNode child) throws InputFileException {
        steps.addLast(step);
        check(child);
        steps.removeLast();
    }

    private void checkNumber(BigDecimal number) throws InputFileException {
        long exponent = (long) number.precision() - number.scale() - 1;
        if (Math.abs(exponent) > JsonLimits.MOST_EXPONENT) {
            throw problem("the exponent of this number is beyond the " + JsonLimits.MOST_EXPONENT + " allowed");
        }
    }

    private void checkLetters(String text) throws InputFileException {
        if (text.codePoints().anyMatch(letter -> Character.getType(letter) == Character.SURROGATE)) {
            throw problem(Quoted.of(text) + " has half a letter: a lone surrogate, from \\ud800 to \\udfff");
        }
    }

    private InputFileException problem(String what) {
        StringBuilder place = new StringBuilder();
        steps.forEach(step -> place.append('/').append(JsonProblem.step(step)));
        return new InputFileException(name, place.toString(), what);
    }
}
