package org.evenfall.setup;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.DateReading;
import org.evenfall.quantity.DateText;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.Text;

/**
 * The one pass in which every entry of a setup is read: each quantity as a number in its core unit, each date, with the
 * findings at the entry's own place. Nothing is read anywhere else.
 */
public final class ReadingPass {

    private final Setup setup;
    private final Map<String, Double> numbers = new HashMap<>();
    /** A form in which a day and a month cannot be swapped. */
    private static final DateTimeFormatter DAY_FIRST = DateTimeFormatter.ofPattern("d.M.uuuu", Locale.ROOT);

    private final Map<String, LocalDate> dates = new HashMap<>();
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final NumberReader reader = new NumberReader(findings::add);

    private ReadingPass(Setup setup) {
        this.setup = setup;
    }

    /** Reads every entry of a setup. */
    public static ReadSetup read(Setup setup) {
        ReadingPass pass = new ReadingPass(setup);
        Entries.ALL.forEach(pass::entry);
        return new ReadSetup(setup, pass.numbers, pass.dates, List.copyOf(pass.findings));
    }

    private <R, T> void entry(Entry<R, T> entry) {
        for (EntryPath<T> path : entry.places(setup).toList()) {
            value(entry, path);
            if (!entry.missingKey().isEmpty() && entry.isBlank(path.get(setup))) {
                findings.add((entry.neededForCard()
                                ? Finding.missing(path.step(), entry.missingKey())
                                : Finding.note(path.step(), entry.missingKey()))
                        .at(path.pointer()));
            }
        }
    }

    private <R, T> void value(Entry<R, T> entry, EntryPath<T> path) {
        if (entry instanceof Quantity<?> quantity) {
            number(quantity, quantityAt(path));
        } else if (entry instanceof QuantityList<?> list) {
            items(path).forEach(item -> number(list, item));
        } else if (entry instanceof QuantityMap<?> map) {
            levers(path).forEach(item -> number(map, item));
        } else if (entry instanceof Text<?> text && text.isDate()) {
            date(path);
        }
    }

    @SuppressWarnings("unchecked") // the path of a Quantity leads to an EnteredQuantity
    private static EntryPath<EnteredQuantity> quantityAt(EntryPath<?> path) {
        return (EntryPath<EnteredQuantity>) path;
    }

    @SuppressWarnings("unchecked") // the path of a QuantityList leads to a list
    private List<EntryPath<EnteredQuantity>> items(EntryPath<?> path) {
        EntryPath<List<EnteredQuantity>> list = (EntryPath<List<EnteredQuantity>>) path;
        List<EntryPath<EnteredQuantity>> items = new ArrayList<>();
        for (int i = 0; i < list.get(setup).size(); i++) {
            items.add(QuantityList.item(list, i));
        }
        return items;
    }

    @SuppressWarnings("unchecked") // the path of a QuantityMap leads to a map
    private List<EntryPath<EnteredQuantity>> levers(EntryPath<?> path) {
        EntryPath<Map<String, EnteredQuantity>> map = (EntryPath<Map<String, EnteredQuantity>>) path;
        return map.get(setup).keySet().stream()
                .map(label -> QuantityMap.item(map, label))
                .toList();
    }

    private void number(Measured entry, EntryPath<EnteredQuantity> path) {
        EnteredQuantity typed = path.get(setup);
        if (typed.isBlank()) {
            return;
        }
        Double value = entry.sums()
                ? reader.sum(typed, entry.range(setup, typed), path)
                : reader.read(typed, entry.range(setup, typed), path);
        if (value != null) {
            numbers.put(path.pointer(), value);
        }
    }

    private void date(EntryPath<?> path) {
        String typed = (String) path.get(setup);
        DateReading reading = DateText.read(typed);
        if (reading instanceof DateReading.Value value) {
            dates.put(path.pointer(), value.date());
        } else if (reading instanceof DateReading.Ambiguous twice) {
            findings.add(Finding.stop(
                            path.step(),
                            "entry.ambiguousDate",
                            new Arg.Day(twice.dayFirst()),
                            new Arg.Day(twice.monthFirst()),
                            Arg.text(DAY_FIRST.format(twice.dayFirst())),
                            Arg.text(twice.monthFirst().toString()))
                    .at(path.pointer()));
        } else if (reading instanceof DateReading.NotADate) {
            findings.add(Finding.stop(path.step(), "entry.notADate", Arg.text(typed.strip()))
                    .at(path.pointer()));
        }
    }
}
