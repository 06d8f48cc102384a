package org.evenfall.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.Rows;

/** Every answer of a setup with its label, for a reader who does not see the page where it was asked. */
public final class AnswerGroups {

    /** The first row of a table in a pointer, and what follows. */
    private static final Pattern ROW = Pattern.compile("(.*?)/(\\d+)(/.*)?");

    private AnswerGroups() {}

    /**
     * Answers that belong together: those of one row of a table, or all single ones of a step.
     *
     * @param step the step that asks for them
     * @param row place of the row in the setup file; empty for single answers
     * @param table what the table is called; empty for single answers
     * @param name what the row is called: its number, or the part that was looked at; empty for single answers
     * @param lines label and answer
     */
    public record Group(Step step, String row, String table, String name, List<ResultLine> lines) {
        /** Copies the list. */
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /** Key of a group: a step's single answers, or a row. */
    private record Key(Step step, String row) {}

    /** All groups, the single answers of a step before its rows; in the order of the steps. */
    public static List<Group> of(Sentences words, Setup setup) {
        Map<Key, List<ResultLine>> groups = new LinkedHashMap<>();
        for (Step step : Step.values()) {
            groups.put(new Key(step, ""), new ArrayList<>());
        }
        for (Entry<?, ?> entry : Entries.ALL) {
            add(words, setup, entry, groups);
        }
        return groups.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> new Group(
                        group.getKey().step(),
                        group.getKey().row(),
                        table(words, group.getKey().row()),
                        name(words, setup, group.getKey().row()),
                        group.getValue()))
                .toList();
    }

    private static <R, T> void add(Sentences words, Setup setup, Entry<R, T> entry, Map<Key, List<ResultLine>> groups) {
        entry.places(setup).forEach(place -> {
            T value = place.get(setup);
            if (!entry.isBlank(value)) {
                Key key = new Key(place.step(), row(place.pointer()));
                List<ResultLine> lines = Answers.lines(words, setup, entry, value, number(key.row()));
                if (!lines.isEmpty()) {
                    groups.computeIfAbsent(key, fresh -> new ArrayList<>()).addAll(lines);
                }
            }
        });
    }

    private static String row(String pointer) {
        Matcher row = ROW.matcher(pointer);
        return row.matches() ? row.group(1) + "/" + row.group(2) : "";
    }

    /** The number of a row, from 1; 0 for none. */
    private static long number(String row) {
        return row.isEmpty() ? 0 : Long.parseLong(row.substring(row.lastIndexOf('/') + 1)) + 1;
    }

    private static String table(Sentences words, String row) {
        Matcher parts = ROW.matcher(row);
        if (!parts.matches()) {
            return "";
        }
        return Entries.ALL.stream()
                .filter(entry -> entry instanceof Rows && entry.patterns().contains(parts.group(1)))
                .map(entry -> words.text(entry.labelKey()))
                .findFirst()
                .orElse("");
    }

    private static String name(Sentences words, Setup setup, String row) {
        Matcher parts = ROW.matcher(row);
        if (!parts.matches()) {
            return "";
        }
        return parts.group(1).equals(MachineCheckPaths.CHECKS.pointer())
                ? words.choice(setup.machineCheck()
                        .checks()
                        .get(Integer.parseInt(parts.group(2)))
                        .item())
                : Long.toString(number(row));
    }
}
