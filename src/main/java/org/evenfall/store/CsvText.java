package org.evenfall.store;

import java.io.IOException;
import java.io.StringReader;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** A table as text: a header line, cells separated by comma, semicolon or tab as the header shows. */
final class CsvText {

    private CsvText() {}

    /** What separates the cells, told by the first line. */
    static char separator(String text) {
        String firstLine = text.lines().findFirst().orElse("");
        return firstLine.contains(";") ? ';' : firstLine.contains("\t") ? '\t' : ',';
    }

    static CSVParser parse(String text) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator(text))
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .get();
        return CSVParser.parse(new StringReader(text.replace("\ufeff", "")), format);
    }
}
