package org.evenfall.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;

/** Trays and catches as tables: a column a tray, a row a test; tests with the same trays in one table. */
final class TrayTableParts {

    /** Most trays next to each other; the others follow in a table below. */
    private static final int COLUMNS = 9;

    /** A place nearer to a whole metre is shown without decimals, m. */
    private static final double WHOLE_M = 0.05;

    private TrayTableParts() {}

    static List<ResultPart> parts(List<TrayTestResult> tests, Sentences words) {
        List<ResultPart> parts = new ArrayList<>();
        Map<List<Double>, List<TrayTestResult>> byPlaces = tests.stream()
                .collect(Collectors.groupingBy(
                        test -> test.evenness().positionsM(), LinkedHashMap::new, Collectors.toList()));
        byPlaces.forEach((places, together) -> {
            for (int from = 0; from < places.size(); from += COLUMNS) {
                int to = Math.min(places.size(), from + COLUMNS);
                String title = parts.isEmpty() ? words.text("card.proof") : "";
                parts.add(new ResultPart(title, table(together, from, to, words), List.of()));
            }
        });
        return parts;
    }

    private static List<List<String>> table(List<TrayTestResult> tests, int from, int to, Sentences words) {
        List<List<String>> rows = new ArrayList<>();
        List<String> places = new ArrayList<>();
        places.add(words.text("trays.line.position"));
        tests.get(0).evenness().positionsM().subList(from, to).forEach(metres -> places.add(place(metres, words)));
        rows.add(places);
        for (TrayTestResult test : tests) {
            List<String> row = new ArrayList<>();
            row.add(words.text("form.test", Arg.count(test.index() + 1L)));
            test.evenness()
                    .relativePercent()
                    .subList(from, to)
                    .forEach(percent -> row.add(words.number(percent, 0, Unit.PERCENT)));
            rows.add(row);
        }
        return rows;
    }

    static String place(double metres, Sentences words) {
        boolean whole = Math.abs(metres - Math.rint(metres)) < WHOLE_M;
        return words.number(metres, whole ? 0 : 1, Unit.M);
    }
}
