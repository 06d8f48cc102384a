package org.evenfall.command.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.evenfall.result.ResultLine;
import org.evenfall.result.ResultPart;

/** Plain text for a page: headings, figures under each other, sentences and tables, with no line too long to print. */
final class ReportPage {

    /** Letters of a line. Assumption: what a terminal shows and a page holds at a readable size. */
    static final int WIDTH = 80;

    /** A number and its percent sign, which no line break separates. */
    private static final Pattern PERCENT = Pattern.compile("(\\d) %");

    static final String INDENT = "   ";

    /** Letters between a label and its figure, and between columns. */
    private static final String GAP = "  ";

    /** A label with more letters has a line of its own. */
    private static final int LONGEST_LABEL = 40;

    private final Locale locale;
    private final List<String> lines = new ArrayList<>();

    ReportPage(Locale locale) {
        this.locale = locale;
    }

    /** A line from the margin, wrapped; lines that follow are indented by so many letters. */
    void line(String text, int hanging) {
        wrapped("", " ".repeat(hanging), text);
    }

    /** A heading with a blank line before it. */
    void heading(String text) {
        lines.add("");
        line(text, INDENT.length());
    }

    /** A heading within a step. */
    void title(String text) {
        wrapped(INDENT, INDENT + INDENT, text + ":");
    }

    /** A part of a step. */
    void part(ResultPart part) {
        if (!part.title().isEmpty()) {
            title(part.title());
        }
        if (!part.table().isEmpty()) {
            table(part.table());
        }
        results(part.results());
    }

    /** Results: a sentence as a paragraph, else label and figure, the figures under each other. */
    void results(List<ResultLine> results) {
        int column = results.stream()
                .mapToInt(result -> result.label().length())
                .filter(length -> length <= LONGEST_LABEL)
                .max()
                .orElse(0);
        for (ResultLine result : results) {
            if (result.label().isEmpty()) {
                sentence(result.value());
            } else if (result.label().length() > column) {
                wrapped(INDENT, INDENT + INDENT, result.label());
                wrapped(INDENT + INDENT, INDENT + INDENT, result.value());
            } else {
                String first = INDENT + padded(result.label(), column) + GAP;
                wrapped(first, " ".repeat(first.length()), result.value());
            }
        }
    }

    /** A sentence as a paragraph; an empty one takes no line. */
    void sentence(String text) {
        if (!text.isEmpty()) {
            wrapped(INDENT, INDENT, text);
        }
    }

    /** One of a list of sentences; lines that follow are indented. */
    void item(String text) {
        wrapped(INDENT, INDENT + INDENT, text);
    }

    /** Rows of as many cells each, the first cell of a row at the left of its column, the others at the right. */
    void table(List<List<String>> rows) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(INDENT).append(padded(row.get(0), widths[0]));
            for (int i = 1; i < columns; i++) {
                line.append(GAP)
                        .append(" ".repeat(widths[i] - row.get(i).length()))
                        .append(row.get(i));
            }
            lines.add(line.toString());
        }
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }

    private void wrapped(String first, String next, String text) {
        List<String> parts = Wrapping.lines(
                PERCENT.matcher(text).replaceAll("$1\u00a0%"), WIDTH - Math.max(first.length(), next.length()), locale);
        for (int i = 0; i < parts.size(); i++) {
            lines.add((i == 0 ? first : next) + parts.get(i));
        }
    }

    /** Everything so far; blanks that hold a number and its unit together become plain ones. */
    String text() {
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            text.append(line.replace('\u00a0', ' ').stripTrailing()).append(System.lineSeparator());
        }
        return text.toString();
    }
}
