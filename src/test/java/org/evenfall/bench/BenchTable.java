package org.evenfall.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** The table of all rows in Markdown, with the name of the computer above it. */
final class BenchTable {

    private static final MathContext FIGURES = new MathContext(3);

    private final List<String> lines = new ArrayList<>();

    BenchTable(String computer) {
        lines.add(computer);
        lines.add("");
        lines.add("| measured | baseline | measured, ms | baseline, ms | ratio | lowest to highest |");
        lines.add("|---|---|---|---|---|---|");
    }

    void add(Row row, Pairs pairs) {
        line(
                row,
                plain(pairs.workMs()),
                plain(pairs.bareMs()),
                plain(pairs.ratio()),
                plain(pairs.lowestRatio()) + " to " + plain(pairs.highestRatio()));
    }

    void missing(Row row, NotMeasuredException reason) {
        line(row, "not measured: " + reason.getMessage(), "", "", "");
    }

    private void line(Row row, String... cells) {
        lines.add("| " + row.measured() + " | " + row.baseline() + " | " + String.join(" | ", cells) + " |");
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }

    /** Three figures, never with an exponent. */
    private static String plain(double value) {
        return new BigDecimal(value).round(FIGURES).toPlainString();
    }
}
