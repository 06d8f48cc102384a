package org.evenfall.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Choice;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.Text;

/** Every answer of a setup in words, as it was typed: one line an entry, one line a row of a table. */
public final class Answers {

    private Answers() {}

    /**
     * One line.
     *
     * @param pointer place in the setup file of the entry, or of the row
     * @param text what was asked and what was answered
     */
    public record Line(String pointer, String text) {}

    /** All that is typed or chosen, in the order of the steps. */
    public static List<Line> of(Sentences words, Setup setup) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (Entry<?, ?> entry : Entries.ALL) {
            add(words, setup, entry, lines);
        }
        return lines.entrySet().stream()
                .map(line ->
                        new Line(line.getKey(), name(words, setup, line.getKey()) + String.join(", ", line.getValue())))
                .toList();
    }

    private static <R, T> void add(Sentences words, Setup setup, Entry<R, T> entry, Map<String, List<String>> lines) {
        entry.places(setup).forEach(place -> {
            T value = place.get(setup);
            if (!entry.isBlank(value)) {
                put(words, setup, entry, place, value, lines);
            }
        });
    }

    private static void put(
            Sentences words,
            Setup setup,
            Entry<?, ?> entry,
            EntryPath<?> place,
            Object value,
            Map<String, List<String>> lines) {
        String row = row(place.pointer());
        List<ResultLine> answers = lines(words, setup, entry, value, 0);
        if (entry instanceof QuantityMap<?>) {
            answers.forEach(answer -> lines.computeIfAbsent(place.pointer(), key -> new ArrayList<>())
                    .add(answer.label() + " " + answer.value()));
            return;
        }
        answers.forEach(answer -> lines.computeIfAbsent(row.isEmpty() ? place.pointer() : row, key -> new ArrayList<>())
                .add(row.isEmpty() ? answer.label() + ": " + answer.value() : answer.value()));
    }

    /**
     * What is typed in an entry, with its label; one line for each lever; none for a table, whose rows have their own entries.
     *
     * @param row number of its row from 1, which some labels name; 0 outside a table
     */
    static List<ResultLine> lines(Sentences words, Setup setup, Entry<?, ?> entry, Object value, long row) {
        if (entry instanceof QuantityMap<?>) {
            return ((Map<?, ?>) value)
                    .entrySet().stream()
                            .map(lever -> new ResultLine(
                                    String.valueOf(lever.getKey()), words.typed((EnteredQuantity) lever.getValue())))
                            .toList();
        }
        String text = text(words, entry, value);
        String label = entry instanceof Quantity<?> quantity
                ? words.text(quantity.labelKey(setup))
                : words.text(entry.labelKey(), Arg.count(row));
        return text.isEmpty() ? List.of() : List.of(new ResultLine(label, text));
    }

    private static String text(Sentences words, Entry<?, ?> entry, Object value) {
        if (entry instanceof Text<?>) {
            return (String) value;
        }
        if (entry instanceof Choice<?, ?>) {
            return words.choice((Enum<?>) value);
        }
        if (entry instanceof Quantity<?>) {
            return words.typed((EnteredQuantity) value);
        }
        if (entry instanceof QuantityList<?>) {
            return ((List<?>) value)
                    .stream().map(one -> words.typed((EnteredQuantity) one)).collect(Collectors.joining(" · "));
        }
        // a table: its rows have their own entries
        return "";
    }

    /** The row of a table that an entry is in; empty for an entry that a setup has once. */
    private static String row(String pointer) {
        String above = pointer.substring(0, pointer.lastIndexOf('/'));
        return above.matches(".*/\\d+") ? above : "";
    }

    /** What a row is called before its values: its number, or the part that was looked at. */
    private static String name(Sentences words, Setup setup, String pointer) {
        String last = pointer.substring(pointer.lastIndexOf('/') + 1);
        if (!last.matches("\\d+")) {
            return "";
        }
        int index = Integer.parseInt(last);
        if (pointer.startsWith(MachineCheckPaths.CHECKS.pointer() + "/")) {
            CheckEntry check = setup.machineCheck().checks().get(index);
            return words.choice(check.item()) + ": ";
        }
        return words.text("form.row", Arg.count(index + 1L)) + ": ";
    }
}
