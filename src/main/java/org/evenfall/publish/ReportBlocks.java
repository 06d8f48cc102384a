package org.evenfall.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Table;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.result.AnswerGroups.Group;
import org.evenfall.result.ResultLine;
import org.evenfall.result.ResultPart;

/** Results and answers in words as blocks of a report. */
final class ReportBlocks {

    /** More columns are no table to read. */
    private static final int MOST_COLUMNS = 6;

    private ReportBlocks() {}

    /** A part of a step. */
    static List<Block> of(ResultPart part) {
        List<Block> blocks = new ArrayList<>();
        if (!part.title().isEmpty()) {
            blocks.add(new Heading(Level.PART, part.title()));
        }
        if (!part.table().isEmpty()) {
            blocks.add(new Table(part.table()));
        }
        blocks.addAll(of(part.results()));
        return blocks;
    }

    /** Results: a sentence, or a label with its value. */
    static List<Block> of(List<ResultLine> results) {
        return results.stream()
                .filter(line -> !line.value().isEmpty())
                .<Block>map(line -> line.label().isEmpty()
                        ? new Text(line.value())
                        : new Pair(line.label().strip(), line.value()))
                .toList();
    }

    /** The answers of one step: single ones, then table by table. */
    static List<Block> answers(List<Group> groups) {
        List<Block> blocks = new ArrayList<>();
        int from = 0;
        while (from < groups.size()) {
            int to = from + 1;
            while (to < groups.size()
                    && groups.get(to).table().equals(groups.get(from).table())) {
                to++;
            }
            List<Group> rows = groups.subList(from, to);
            blocks.addAll(rows.get(0).row().isEmpty() ? of(rows.get(0).lines()) : rows(rows));
            from = to;
        }
        return blocks;
    }

    private static List<Block> rows(List<Group> rows) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(Level.PART, rows.get(0).table()));
        if (rows.stream().noneMatch(row -> row.name().matches("\\d+"))) {
            rows.forEach(row -> blocks.add(new Pair(row.name(), values(row))));
            return blocks;
        }
        List<String> labels = rows.stream()
                .flatMap(row -> row.lines().stream())
                .map(ResultLine::label)
                .distinct()
                .toList();
        if (labels.size() > MOST_COLUMNS || labels.size() > rows.get(0).lines().size()) {
            rows.forEach(row -> blocks.add(new Item(row.name(), labelled(row.lines()))));
        } else {
            blocks.add(new Table(table(rows, labels)));
        }
        return blocks;
    }

    private static List<List<String>> table(List<Group> rows, List<String> labels) {
        List<List<String>> table = new ArrayList<>();
        table.add(labels);
        for (Group row : rows) {
            table.add(labels.stream().map(label -> value(row, label)).toList());
        }
        return table;
    }

    private static String value(Group row, String label) {
        return row.lines().stream()
                .filter(line -> line.label().equals(label))
                .map(ResultLine::value)
                .collect(Collectors.joining(", "));
    }

    /** The first answer, which needs no label; the others with theirs. */
    private static String values(Group row) {
        String first = row.lines().get(0).value();
        return row.lines().size() == 1
                ? first
                : first + " · " + labelled(row.lines().subList(1, row.lines().size()));
    }

    /** Labels and values one after the other. */
    static String labelled(List<ResultLine> lines) {
        return lines.stream().map(line -> line.label() + ": " + line.value()).collect(Collectors.joining(" · "));
    }
}
