package org.evenfall.result;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A part of a step: a table or results, under a title.
 *
 * @param title its title; empty for none
 * @param table rows of a table before the results; may be empty
 * @param results figures and sentences
 */
public record ResultPart(String title, List<List<String>> table, List<ResultLine> results) {

    /** A blank at which no line is broken. */
    private static final char NO_BREAK = '\u00a0';

    /** Copies the lists. */
    public ResultPart {
        table = List.copyOf(table);
        results = List.copyOf(results);
    }

    /** Results without a title. */
    static ResultPart of(List<ResultLine> results) {
        return new ResultPart("", List.of(), results);
    }

    /** Results under a title. */
    static ResultPart of(String title, List<ResultLine> results) {
        return new ResultPart(title, List.of(), results);
    }

    /** Labels and figures one after the other in a paragraph that begins with a title; nothing without results. */
    static ResultPart inline(String title, List<ResultLine> results) {
        return of(results.isEmpty() ? List.of() : List.of(ResultLine.sentence(title + ": " + joined(results))));
    }

    /** Labels and figures one after the other; a figure stays on the line of its label. */
    public static String joined(List<ResultLine> results) {
        return results.stream()
                .map(result -> result.label() + NO_BREAK + result.value())
                .collect(Collectors.joining(" · "));
    }

    /** The parts that have something to show. */
    static List<ResultPart> filled(List<ResultPart> parts) {
        return parts.stream()
                .filter(part -> !part.table().isEmpty() || !part.results().isEmpty())
                .toList();
    }
}
