package org.evenfall.publish;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.FieldUse;
import org.evenfall.rate.SeasonUse;
import org.evenfall.report.ReportContent;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Notice;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Table;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.result.LogLines;
import org.jspecify.annotations.Nullable;

/** The record of a season as blocks of a report: each field with its passes, all fields with their sums, the season. */
record SeasonBlocks(SeasonRecord record, Sentences words) {

    /** A longer name is cut in a table; the table for spreadsheets has all of it. */
    private static final int LONGEST = 120;

    /**
     * The content of the pages.
     *
     * @param when time of printing
     */
    static ReportContent of(SeasonRecord record, Sentences words, LocalDateTime when) {
        SeasonBlocks pages = new SeasonBlocks(record, words);
        return new ReportContent(
                pages.title(),
                pages.blocks(),
                words.text(
                        "sheet.printed",
                        new Arg.Day(when.toLocalDate()),
                        Arg.text(when.toLocalTime().withSecond(0).withNano(0).toString())),
                words.text("sheet.page", Arg.text("{0}"), Arg.text("{1}")),
                words.locale().getLanguage());
    }

    private String title() {
        return record.seasons().isEmpty()
                ? words.text("record.title")
                : words.text("record.titleOf", Arg.text(String.join(", ", record.seasons())));
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(Level.TITLE, title()));
        blocks.add(notice());
        if (record.rows().isEmpty()) {
            blocks.add(new Text(words.text("record.nothing")));
            return blocks;
        }
        for (SeasonRecord.Field field : record.fields()) {
            blocks.add(new Heading(Level.SECTION, name(field)));
            blocks.add(new Table(passes(field)));
        }
        blocks.add(new Heading(Level.SECTION, words.text("record.fields")));
        blocks.add(new Table(fields()));
        blocks.add(new Heading(Level.SECTION, words.text("record.season")));
        blocks.addAll(season());
        blocks.add(new Heading(Level.SECTION, words.text("record.how")));
        for (String key : List.of("record.howRate", "record.howNitrogen", "record.howField")) {
            blocks.add(new Item("", words.text(key)));
        }
        return blocks;
    }

    private Notice notice() {
        List<String> lines = new ArrayList<>();
        if (record.invented()) {
            lines.add(words.text("report.invented"));
        }
        lines.add(words.text("record.first"));
        return new Notice(lines);
    }

    /** Farm, field and crop, as far as they are known. */
    private String name(SeasonRecord.Field field) {
        SeasonRow first = field.first();
        String crops = field.rows().stream()
                .map(SeasonRow::crop)
                .filter(crop -> !crop.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        return Stream.of(first.farm(), LogLines.name(words, first.field()), crops)
                .filter(part -> !part.isEmpty())
                .map(SeasonBlocks::cut)
                .collect(Collectors.joining(" · "));
    }

    private List<List<String>> passes(SeasonRecord.Field field) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(heads(
                "trays.date",
                "record.product",
                "record.nitrogenShare",
                "record.inhibitor",
                "record.machine",
                "record.area",
                "record.productKg",
                "record.productRate",
                "record.nitrogenRate",
                "record.nitrogenKg",
                "record.revision"));
        for (SeasonRow row : field.rows()) {
            rows.add(List.of(
                    row.date(),
                    cut(row.product().name()),
                    number(row.product().nitrogenPercent(), 1),
                    cut(inhibitor(row.product())),
                    cut(row.machine()),
                    number(row.areaHa(), 2),
                    number(row.productKg(), 0),
                    number(row.productKgPerHa(), 0),
                    number(row.nitrogenKgPerHa(), 0),
                    number(row.nitrogenKg(), 0),
                    row.revision() == 0 ? "" : Integer.toString(row.revision())));
        }
        return rows;
    }

    private String inhibitor(SeasonRow.Product product) {
        return product.inhibitor().isEmpty() ? words.choice(product.treated()) : product.inhibitor();
    }

    private List<List<String>> fields() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(heads(
                "record.field",
                "record.passes",
                "record.area",
                "record.productKg",
                "record.nitrogenKg",
                "record.nitrogenRate"));
        for (SeasonRecord.Field field : record.fields()) {
            FieldUse sums = field.sums();
            rows.add(List.of(
                    name(field),
                    Integer.toString(field.rows().size()),
                    number(sums == null ? null : sums.areaHa(), 2),
                    number(sums == null ? null : sums.productKg(), 0),
                    number(sums == null ? null : sums.nitrogenKg(), 0),
                    number(sums == null ? null : sums.nitrogenKgPerHa(), 0)));
        }
        return rows;
    }

    private List<Block> season() {
        SeasonUse total = record.total();
        List<Block> blocks = new ArrayList<>();
        blocks.add(pair("record.passes", Integer.toString(record.rows().size())));
        blocks.add(pair("record.spread", words.number(total.spreadHa(), 2, Unit.HA)));
        blocks.add(pair("record.productAll", words.number(total.productKg(), 0, Unit.KG)));
        if (total.nitrogenKg() != null) {
            blocks.add(pair("record.nitrogenAll", words.number(total.nitrogenKg(), 0, Unit.KG)));
        }
        if (record.incomplete() > 0) {
            blocks.add(new Text(words.text("record.incomplete", Arg.count(record.incomplete()))));
        }
        return blocks;
    }

    private Pair pair(String key, String value) {
        return new Pair(words.text(key), value);
    }

    private List<String> heads(String... keys) {
        return Stream.of(keys).map(key -> words.text(key)).toList();
    }

    private String number(@Nullable Double value, int decimals) {
        return value == null ? "" : words.number(value, decimals, Unit.NONE);
    }

    private static String cut(String name) {
        return name.length() <= LONGEST ? name : name.substring(0, LONGEST - 1).stripTrailing() + "…";
    }
}
