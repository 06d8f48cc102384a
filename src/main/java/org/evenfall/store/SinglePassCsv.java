package org.evenfall.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.trays.OverlapResult;

/**
 * A line of trays as a table: {@code position,amount}, positions in any one length unit, negative left of the pass, in any
 * order; semicolons or tabs separate as well, and then a decimal comma is understood. One bad line refuses the file.
 */
public final class SinglePassCsv {

    private static final Pattern POINT = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private SinglePassCsv() {}

    public static SpreadPattern read(String text, String name) throws InputFileException {
        char separator = CsvText.separator(text);
        SortedMap<Double, Double> line = new TreeMap<>();
        try (CSVParser parser = CsvText.parse(text)) {
            for (String needed : new String[] {"position", "amount"}) {
                if (!parser.getHeaderNames().contains(needed)) {
                    throw new InputFileException(
                            name, "line 1", "column " + needed + " is missing; the header is position,amount");
                }
            }
            for (CSVRecord row : parser) {
                String place = "line " + parser.getCurrentLineNumber();
                double position = number(row, "position", separator, name, place);
                double amount = number(row, "amount", separator, name, place);
                if (amount < 0) {
                    throw new InputFileException(
                            name, place + ", column amount", "\"" + row.get("amount") + "\" is below 0");
                }
                if (line.put(position, amount) != null) {
                    throw new InputFileException(name, place + ", column position", "two trays at one place");
                }
            }
        } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException | IOException broken) {
            throw new InputFileException(name, "", "not a table: " + broken.getMessage());
        }
        if (line.size() < OverlapResult.FEWEST || line.size() > OverlapResult.MOST) {
            throw new InputFileException(
                    name,
                    "",
                    line.size() + " trays; allowed is " + OverlapResult.FEWEST + " to " + OverlapResult.MOST
                            + ", usual " + OverlapResult.USUAL_FEWEST + " or more");
        }
        if (line.values().stream().allMatch(amount -> amount == 0)) {
            throw new InputFileException(name, "column amount", "nothing was caught");
        }
        return new SpreadPattern(
                line.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                line.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double number(CSVRecord row, String column, char separator, String name, String place)
            throws InputFileException {
        String word = row.isSet(column) ? row.get(column) : "";
        if (separator == ',' && POINT.matcher(word).matches()) {
            // where a comma separates cells, a point can only be a decimal point
            return Double.parseDouble(word);
        }
        NumberReading reading = NumberText.read(word);
        if (reading instanceof NumberReading.Value value) {
            return value.value();
        }
        throw new InputFileException(
                name,
                place + ", column " + column,
                reading instanceof NumberReading.Ambiguous
                        ? "\"" + word + "\" could mean a thousand; write it with another count of decimals"
                        : "\"" + word + "\" is not a number");
    }
}
