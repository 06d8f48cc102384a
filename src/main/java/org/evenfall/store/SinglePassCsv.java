package org.evenfall.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Quoted;
import org.evenfall.trays.OverlapResult;

/**
 * A line of trays under one pass as a table with the columns {@code position} (any one unit of length, negative left of
 * the pass) and {@code amount} (any one unit, at least 0), rows in any order, separated by comma, semicolon or tab. A
 * decimal comma is read where a semicolon or tab separates. One wrong line refuses the whole file.
 */
public final class SinglePassCsv {

    /** Farthest position from the middle of the pass, in the unit of the table. Assumption: no line is longer. */
    public static final int FARTHEST = 1000;

    /** Least distance of two positions, in the unit of the table. Assumption: no tray is narrower. */
    private static final double CLOSEST = 0.01;

    /** Most and least of an amount that is not 0. Assumption: no unit of mass or rate needs others. */
    private static final double MOST_AMOUNT = 1e9;

    private static final double LEAST_AMOUNT = 1e-9;

    private static final String POSITION = "position";
    private static final String AMOUNT = "amount";
    private static final Pattern POINT = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private SinglePassCsv() {}

    /**
     * The pattern of the table.
     *
     * @param name what to call the file in a message
     * @throws InputFileException for the first line or column that is wrong, for fewer than {@value OverlapResult#FEWEST} or
     *     more than {@value OverlapResult#MOST} trays, and where nothing was caught
     */
    public static SpreadPattern read(String text, String name) throws InputFileException {
        char separator = CsvText.separator(text);
        SortedMap<Double, Double> amounts = new TreeMap<>();
        try (CSVParser parser = CsvText.parse(text, name, List.of(POSITION, AMOUNT))) {
            for (CSVRecord row : parser) {
                Cells cells = new Cells(row, parser.getCurrentLineNumber(), separator, name);
                cells.checkCount(parser.getHeaderNames().size());
                double amount = cells.number(AMOUNT);
                if (amount < 0) {
                    throw cells.problem(AMOUNT, Quoted.of(row.get(AMOUNT)) + " is below 0");
                }
                if (amount > MOST_AMOUNT || (amount > 0 && amount < LEAST_AMOUNT)) {
                    throw cells.problem(
                            AMOUNT,
                            Quoted.of(row.get(AMOUNT)) + "; allowed is 0, or " + LEAST_AMOUNT + " to " + MOST_AMOUNT);
                }
                // adding 0 makes one zero of 0 and -0
                double position = cells.number(POSITION) + 0.0;
                if (Math.abs(position) > FARTHEST) {
                    throw cells.problem(
                            POSITION, Quoted.of(row.get(POSITION)) + "; allowed is " + -FARTHEST + " to " + FARTHEST);
                }
                if (amounts.put(position, amount) != null) {
                    throw cells.problem(POSITION, "two trays have this position");
                }
            }
        } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException | IOException broken) {
            throw new InputFileException(name, "", "not a table: " + broken.getMessage());
        }
        if (amounts.size() < OverlapResult.FEWEST || amounts.size() > OverlapResult.MOST) {
            throw new InputFileException(
                    name,
                    "",
                    amounts.size() + " trays; allowed is " + OverlapResult.FEWEST + " to " + OverlapResult.MOST
                            + ", usual " + OverlapResult.USUAL_FEWEST + " or more");
        }
        double before = Double.NEGATIVE_INFINITY;
        for (double position : amounts.keySet()) {
            if (position - before < CLOSEST) {
                throw new InputFileException(
                        name, "column " + POSITION, before + " and " + position + " are closer than " + CLOSEST);
            }
            before = position;
        }
        if (amounts.values().stream().allMatch(amount -> amount == 0)) {
            throw new InputFileException(name, "column " + AMOUNT, "nothing was caught");
        }
        return new SpreadPattern(
                amounts.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                amounts.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private record Cells(CSVRecord row, long line, char separator, String file) {

        /** More cells than the header has come from a decimal comma where a comma separates. */
        void checkCount(int columns) throws InputFileException {
            if (row.size() > columns) {
                throw problem(
                        "",
                        "the line has " + row.size() + " cells, the header " + columns
                                + "; with a decimal comma, separate the cells by semicolons");
            }
        }

        double number(String column) throws InputFileException {
            String word = row.isSet(column) ? row.get(column) : "";
            // where a comma separates cells, a point can only be a decimal point
            NumberReading reading = separator == ',' && POINT.matcher(word).matches()
                    ? new NumberReading.Value(Double.parseDouble(word))
                    : NumberText.read(word);
            if (reading instanceof NumberReading.Value value && Double.isFinite(value.value())) {
                return value.value();
            }
            throw problem(column, CsvText.notANumber(word, reading));
        }

        InputFileException problem(String column, String what) {
            return new InputFileException(file, CsvText.place(line, column), what);
        }
    }
}
