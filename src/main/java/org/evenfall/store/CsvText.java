package org.evenfall.store;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.Quoted;

/** A table as text: a header line, then one line for each row; cells separated by comma, semicolon or tab. */
final class CsvText {

    private CsvText() {}

    /** The separator of the header line: a semicolon or a tab where it has one, else a comma. */
    static char separator(String text) {
        String firstLine = text.lines().findFirst().orElse("");
        return firstLine.contains(";") ? ';' : firstLine.contains("\t") ? '\t' : ',';
    }

    /**
     * The rows under a header line; a byte order mark, blank lines and blanks around a cell count for nothing.
     *
     * @param name what to call the file in a message
     * @param needed columns that must be there
     * @throws InputFileException when a needed column is missing or a column occurs twice
     */
    static CSVParser parse(String text, String name, List<String> needed) throws IOException, InputFileException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator(text))
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .get();
        CSVParser parser = CSVParser.parse(new StringReader(InputText.withoutMark(text)), format);
        Set<String> columns = new HashSet<>();
        for (String column : parser.getHeaderNames()) {
            if (!columns.add(column)) {
                throw new InputFileException(name, "line 1", "column " + column + " occurs twice");
            }
        }
        for (String column : needed) {
            if (!columns.contains(column)) {
                throw new InputFileException(
                        name, "line 1", "column " + column + " is missing; needed are " + String.join(", ", needed));
            }
        }
        return parser;
    }

    /** Where a cell is. */
    static String place(long line, String column) {
        return "line " + line + (column.isEmpty() ? "" : ", column " + column);
    }

    /** Why a text is not taken as a number. */
    static String notANumber(String word, NumberReading reading) {
        return reading instanceof NumberReading.Ambiguous
                ? Quoted.of(word) + " could mean a thousand; write it with another count of decimals"
                : Quoted.of(word) + " is not a number";
    }
}
