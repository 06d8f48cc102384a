package org.evenfall.result;

import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * One result in words.
 *
 * @param label what it is; empty when the value is a sentence, a blank when it goes on from the line before
 * @param value the figure with its unit, a word of choice, or a sentence
 */
public record ResultLine(String label, String value) {

    /** A sentence, which needs no label. */
    public static ResultLine sentence(String text) {
        return new ResultLine("", text);
    }

    /** A text below the value of the line before. */
    public static ResultLine below(String text) {
        return new ResultLine(" ", text);
    }

    /** Adds a sentence, unless it is empty. */
    public static void addSentence(List<ResultLine> lines, String text) {
        if (!text.isEmpty()) {
            lines.add(sentence(text));
        }
    }

    /** Adds a number with the label of a key, unless it is null. */
    public static void add(
            List<ResultLine> lines, Sentences words, String key, @Nullable Double value, int decimals, Unit unit) {
        if (value != null) {
            lines.add(new ResultLine(words.text(key), words.number(value, decimals, unit)));
        }
    }

    /** Adds a text as typed with the label of a key, unless it is blank. */
    public static void addTyped(List<ResultLine> lines, Sentences words, String key, String typed) {
        if (!typed.isBlank()) {
            lines.add(new ResultLine(words.text(key), typed.strip()));
        }
    }

    /** Adds a quantity as typed with the label of a key, unless it is blank. */
    public static void addTyped(List<ResultLine> lines, Sentences words, String key, EnteredQuantity typed) {
        if (!typed.isBlank()) {
            lines.add(new ResultLine(words.text(key), words.typed(typed)));
        }
    }
}
