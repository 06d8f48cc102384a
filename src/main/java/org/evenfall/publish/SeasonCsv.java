package org.evenfall.publish;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;

/**
 * The record of a season as a table (RFC 4180), one line a pass. Sums are left to the program that reads it. What is not
 * known is an empty cell.
 */
final class SeasonCsv {

    private static final List<String> HEADER = List.of(
            "date",
            "farm",
            "field",
            "crop",
            "product",
            "nitrogen_percent",
            "machine",
            "area_ha",
            "product_kg",
            "product_kg_per_ha",
            "nitrogen_kg_per_ha",
            "nitrogen_kg",
            "urease_inhibitor",
            "card_revision");

    /** Decimals of an area, ha, and of a nitrogen content, %. */
    private static final int FINE = 2;

    /** Decimals of a weight, kg, and of a rate, kg/ha. */
    private static final int COARSE = 1;

    /** A spreadsheet takes a text that begins with one of these for a formula. */
    private static final String FORMULA = "=+-@\t\r";

    private SeasonCsv() {}

    /** The table as text. */
    static String of(SeasonRecord record) {
        StringBuilder text = new StringBuilder(line(HEADER));
        for (SeasonRow row : record.rows()) {
            text.append(line(cells(row)));
        }
        return text.toString();
    }

    private static String line(List<String> cells) {
        return CSVFormat.RFC4180.format(cells.toArray()) + CSVFormat.RFC4180.getRecordSeparator();
    }

    private static List<String> cells(SeasonRow row) {
        return List.of(
                harmless(row.date()),
                harmless(row.farm()),
                harmless(row.field()),
                harmless(row.crop()),
                harmless(row.product().name()),
                number(row.product().nitrogenPercent(), FINE),
                harmless(row.machine()),
                number(row.areaHa(), FINE),
                number(row.productKg(), COARSE),
                number(row.productKgPerHa(), COARSE),
                number(row.nitrogenKgPerHa(), COARSE),
                number(row.nitrogenKg(), COARSE),
                harmless(inhibitor(row.product())),
                row.revision() == 0 ? "" : Integer.toString(row.revision()));
    }

    /** Its name where there is one, else yes or no; empty while not answered. */
    private static String inhibitor(SeasonRow.Product product) {
        return switch (product.treated()) {
            case YES -> product.inhibitor().isEmpty() ? "yes" : product.inhibitor();
            case NO -> "no";
            case UNANSWERED -> "";
        };
    }

    private static String number(@Nullable Double value, int decimals) {
        return value == null
                ? ""
                : BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString();
    }

    /** A text that no spreadsheet computes: one that looks like a formula and is no number gets an apostrophe. */
    static String harmless(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 && !isNumber(text) ? "'" + text : text;
    }

    private static boolean isNumber(String text) {
        return text.matches("[+-]?\\d+([.,]\\d+)?");
    }
}
