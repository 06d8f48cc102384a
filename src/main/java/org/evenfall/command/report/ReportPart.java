package org.evenfall.command.report;

import java.util.List;
import org.evenfall.result.ResultLine;

/**
 * A part of a step: a table or results, under a title.
 *
 * @param title its title; empty for none
 * @param table rows of a table before the results; may be empty
 * @param results figures and sentences
 */
record ReportPart(String title, List<List<String>> table, List<ResultLine> results) {

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
