package org.evenfall.publish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.evenfall.rate.FieldUse;
import org.evenfall.rate.PassUse;
import org.evenfall.rate.SeasonUse;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.SeasonLogResult;
import org.evenfall.setup.SeasonLogResult.Pass;
import org.evenfall.setup.entry.PassEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.Text;
import org.jspecify.annotations.Nullable;

/**
 * What was spread in a season, from the logs of several setups. Pure: the same setups give the same record.
 *
 * @param seasons the seasons of the setups with a pass, each once
 * @param invented whether one of these setups is an invented example
 * @param rows every pass, by day, those without a day last
 * @param fields each field with its sums
 * @param total all passes together
 */
record SeasonRecord(List<String> seasons, boolean invented, List<SeasonRow> rows, List<Field> fields, SeasonUse total) {

    /** A setup and a later revision of it agree in these; several products on one field are no revisions of each other. */
    private static final List<Text<?>> SAME_JOB = List.of(
            StartPaths.FARM,
            StartPaths.FIELD,
            StartPaths.CROP,
            StartPaths.SEASON,
            MachinePaths.NAME,
            ProductPaths.NAME);

    /** Copies the lists. */
    SeasonRecord {
        seasons = List.copyOf(seasons);
        rows = List.copyOf(rows);
        fields = List.copyOf(fields);
    }

    /**
     * A field with all its passes.
     *
     * @param rows its passes, at least one
     * @param sums their sums; null while none has area and product
     */
    record Field(List<SeasonRow> rows, @Nullable FieldUse sums) {
        /** Copies the list. */
        Field {
            rows = List.copyOf(rows);
        }

        /** Its first pass, which names it. */
        SeasonRow first() {
            return rows.get(0);
        }
    }

    /**
     * The record of these setups. Revisions carry the log along: of those of one job only the newest counts. Where two
     * files have the same revision, a pass that is in both counts once.
     */
    static SeasonRecord of(List<Setup> setups, Function<Setup, Assessment> assess) {
        List<SeasonRow> rows = new ArrayList<>();
        Set<String> seasons = new LinkedHashSet<>();
        boolean invented = false;
        for (List<Setup> job : jobs(setups).values()) {
            int newest = job.stream()
                    .mapToInt(setup -> setup.card().revision())
                    .max()
                    .orElse(0);
            Set<PassEntry> counted = new HashSet<>();
            for (Setup setup : job) {
                if (setup.card().revision() < newest) {
                    continue;
                }
                List<SeasonRow> own = rows(setup, assess.apply(setup), counted);
                counted.addAll(setup.log().passes());
                rows.addAll(own);
                if (!own.isEmpty()) {
                    seasons.add(setup.start().season().strip());
                    invented |= setup.guide().isInvented();
                }
            }
        }
        seasons.remove("");
        rows.sort(Comparator.comparing((SeasonRow row) -> row.date().isEmpty()).thenComparing(SeasonRow::date));
        List<PassUse> amounts = SeasonRow.amounts(rows);
        return new SeasonRecord(List.copyOf(seasons), invented, rows, fields(rows), SeasonUse.of(amounts));
    }

    private static Map<List<String>, List<Setup>> jobs(List<Setup> setups) {
        Map<List<String>, List<Setup>> jobs = new LinkedHashMap<>();
        for (Setup setup : setups) {
            List<String> key = SAME_JOB.stream()
                    .map(entry -> SeasonLogResult.plain(entry.get(setup)))
                    .toList();
            jobs.computeIfAbsent(key, fresh -> new ArrayList<>()).add(setup);
        }
        return jobs;
    }

    /** @param counted passes of another file of the same revision */
    private static List<SeasonRow> rows(Setup setup, Assessment assessment, Set<PassEntry> counted) {
        List<SeasonRow> rows = new ArrayList<>();
        for (Pass pass : assessment.log().passes()) {
            if (!counted.contains(setup.log().passes().get(pass.index()))) {
                rows.add(SeasonRow.of(setup, assessment, pass));
            }
        }
        return rows;
    }

    private static List<Field> fields(List<SeasonRow> rows) {
        Map<List<String>, List<SeasonRow>> byField = new LinkedHashMap<>();
        for (SeasonRow row : rows) {
            List<String> key = List.of(SeasonLogResult.plain(row.farm()), SeasonLogResult.plain(row.field()));
            byField.computeIfAbsent(key, fresh -> new ArrayList<>()).add(row);
        }
        return byField.values().stream().map(SeasonRecord::field).toList();
    }

    private static Field field(List<SeasonRow> rows) {
        List<PassUse> amounts = SeasonRow.amounts(rows);
        return new Field(rows, amounts.isEmpty() ? null : FieldUse.of(amounts));
    }

    /** Number of passes in which something is missing; figures that are missing count in no sum. */
    long incomplete() {
        return rows.stream().filter(row -> !row.complete()).count();
    }
}
