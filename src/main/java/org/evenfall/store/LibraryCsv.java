package org.evenfall.store;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Typed;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.ReferenceEntry;
import org.evenfall.setup.entry.SettingsEntries;

/**
 * Tested products as a table. Columns, in any order, separated by comma or semicolon: {@code id, name, form, width_m,
 * nitrogen_percent, bulk_density_kg_per_l, apertures_mm, shares_percent, d50_mm, tested_cv_percent, pto_rpm,
 * height_over_crop_cm, tilt_deg, source} and one column {@code lever:LABEL} a lever. Lists of numbers are separated by
 * blanks. Only id, name and width_m must be there. A decimal comma is understood. One bad line refuses the whole file.
 */
public final class LibraryCsv {

    private static final List<String> NEEDED = List.of("id", "name", "width_m");
    private static final String LEVER = "lever:";

    private LibraryCsv() {}

    public static List<ReferenceEntry> read(String text, String name) throws SetupFileException {
        String firstLine = text.lines().findFirst().orElse("");
        char separator = firstLine.contains(";") ? ';' : ',';
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.replace("\ufeff", "")), format)) {
            for (String needed : NEEDED) {
                if (!parser.getHeaderNames().contains(needed)) {
                    throw new SetupFileException(name, "line 1", "column " + needed + " is missing");
                }
            }
            List<ReferenceEntry> entries = new ArrayList<>();
            for (CSVRecord row : parser) {
                entries.add(new Row(row, parser.getCurrentLineNumber(), name, parser.getHeaderNames()).entry());
            }
            return entries;
        } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException | IOException broken) {
            throw new SetupFileException(name, "", "not a table: " + broken.getMessage());
        }
    }

    private record Row(CSVRecord row, long line, String file, List<String> columns) {

        ReferenceEntry entry() throws SetupFileException {
            if (!row.isConsistent()) {
                throw problem("", "the line has " + row.size() + " cells, the header " + columns.size());
            }
            Map<String, Typed> levers = new LinkedHashMap<>();
            for (String column : columns) {
                if (column.startsWith(LEVER) && !text(column).isEmpty()) {
                    levers.put(column.substring(LEVER.length()).strip(), number(column, Unit.NONE));
                }
            }
            String id = needed("id");
            return new ReferenceEntry(
                    id,
                    needed("name"),
                    form(),
                    number("width_m", Unit.M),
                    number("nitrogen_percent", Unit.PERCENT),
                    number("bulk_density_kg_per_l", Unit.KG_PER_L),
                    numbers("apertures_mm", Unit.MM),
                    numbers("shares_percent", Unit.PERCENT),
                    number("d50_mm", Unit.MM),
                    number("tested_cv_percent", Unit.PERCENT),
                    new SettingsEntries(
                            levers,
                            number("pto_rpm", Unit.RPM),
                            number("height_over_crop_cm", Unit.CM),
                            number("tilt_deg", Unit.DEG)),
                    text("source"));
        }

        private String text(String column) {
            return columns.contains(column) ? row.get(column) : "";
        }

        private String needed(String column) throws SetupFileException {
            if (text(column).isEmpty()) {
                throw problem(column, "is empty");
            }
            return text(column);
        }

        private ProductForm form() throws SetupFileException {
            String word = text("form");
            if (word.isEmpty()) {
                return ProductForm.UNANSWERED;
            }
            return Arrays.stream(ProductForm.values())
                    .filter(form -> form.name().equals(word.toUpperCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() ->
                            problem("form", "\"" + word + "\" is not one of " + Arrays.toString(ProductForm.values())));
        }

        private Typed number(String column, Unit unit) throws SetupFileException {
            String word = text(column);
            return word.isEmpty() ? Typed.EMPTY : checked(word, column, unit);
        }

        private List<Typed> numbers(String column, Unit unit) throws SetupFileException {
            List<Typed> numbers = new ArrayList<>();
            for (String word :
                    text(column).isEmpty() ? new String[0] : text(column).split("\\s+", -1)) {
                numbers.add(checked(word, column, unit));
            }
            return numbers;
        }

        private Typed checked(String word, String column, Unit unit) throws SetupFileException {
            NumberReading reading = NumberText.read(word);
            if (reading instanceof NumberReading.Ambiguous) {
                throw problem(
                        column, "\"" + word + "\" could mean a thousand; write it with another count of decimals");
            }
            if (!(reading instanceof NumberReading.Value)) {
                throw problem(column, "\"" + word + "\" is not a number");
            }
            return new Typed(word, unit);
        }

        private SetupFileException problem(String column, String what) {
            return new SetupFileException(file, "line " + line + (column.isEmpty() ? "" : ", column " + column), what);
        }
    }
}
