package org.evenfall.command.report;

import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.result.ResultLine;

/**
 * A part of a step: a table or results, under a title.
 *
 * @param title its title; empty for none
 * @param table rows of a table before the results; may be empty
 * @param results figures and sentences
 */
record ReportPart(String title, List<List<String>> table, List<ResultLine> results) {

    /** A blank at which no line is broken. */
    private static final char NO_BREAK = '\u00a0';

    /** Copies the lists. */
    ReportPart {
        table = List.copyOf(table);
        results = List.copyOf(results);
    }

    /** Results without a title. */
    static ReportPart of(List<ResultLine> results) {
        return new ReportPart("", List.of(), results);
    }

    /** Results under a title. */
    static ReportPart of(String title, List<ResultLine> results) {
        return new ReportPart(title, List.of(), results);
    }

    /** Labels and figures one after the other in a paragraph that begins with a title; nothing without results. */
    static ReportPart inline(String title, List<ResultLine> results) {
        String paragraph = results.stream()
                .map(result -> result.label() + NO_BREAK + result.value())
                .collect(Collectors.joining(" · "));
        return of(results.isEmpty() ? List.of() : List.of(ResultLine.sentence(title + ": " + paragraph)));
    }

    /** The parts that have something to show. */
    static List<ReportPart> filled(List<ReportPart> parts) {
        return parts.stream()
                .filter(part -> !part.table().isEmpty() || !part.results().isEmpty())
                .toList();
    }

    void write(ReportPage page) {
        if (!title.isEmpty()) {
            page.title(title);
        }
        if (!table.isEmpty()) {
            page.table(table);
        }
        page.results(results);
    }
}
