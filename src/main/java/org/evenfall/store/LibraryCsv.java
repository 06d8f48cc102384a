package org.evenfall.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.setup.FieldSpec;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.UnknownKeys;

/**
 * Tested products as a table. Columns, in any order, separated by comma, semicolon or tab: {@code id, name, form, width_m,
 * nitrogen_percent, bulk_density_kg_per_l, apertures_mm, shares_percent, d50_mm, tested_cv_percent, pto_rpm,
 * height_over_crop_cm, tilt_deg, source} and one column {@code lever:LABEL} a lever. Lists of numbers are separated by
 * blanks. Only id, name and width_m are needed. A decimal comma is read. One wrong line refuses the whole file.
 */
public final class LibraryCsv {

    private static final List<String> NEEDED = List.of("id", "name", "width_m");
    private static final String LEVER = "lever:";
    private static final Set<String> KNOWN = Set.of(
            "id",
            "name",
            "form",
            "width_m",
            "nitrogen_percent",
            "bulk_density_kg_per_l",
            "apertures_mm",
            "shares_percent",
            "d50_mm",
            "tested_cv_percent",
            "pto_rpm",
            "height_over_crop_cm",
            "tilt_deg",
            "source");

    private LibraryCsv() {}

    /**
     * The tested products of a table, in its order.
     *
     * @param name what to call the file in a message
     * @throws InputFileException for the first line or column that is wrong; nothing of the file is taken then
     */
    public static List<TestedProductEntry> read(String text, String name) throws InputFileException {
        try (CSVParser parser = CsvText.parse(text, name, NEEDED)) {
            for (String column : parser.getHeaderNames()) {
                if (!KNOWN.contains(column) && !column.startsWith(LEVER)) {
                    throw new InputFileException(name, "line 1", "column " + column + " is not known");
                }
            }
            List<TestedProductEntry> entries = new ArrayList<>();
            Set<String> ids = new HashSet<>();
            for (CSVRecord row : parser) {
                if (!ids.add(row.get("id"))) {
                    throw new InputFileException(
                            name,
                            CsvText.place(parser.getCurrentLineNumber(), "id"),
                            "\"" + row.get("id") + "\" occurs twice");
                }
                entries.add(new Row(row, parser.getCurrentLineNumber(), name, parser.getHeaderNames()).entry());
            }
            return entries;
        } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException | IOException broken) {
            throw new InputFileException(name, "", "not a table: " + broken.getMessage());
        }
    }

    private record Row(CSVRecord row, long line, String file, List<String> columns) {

        TestedProductEntry entry() throws InputFileException {
            if (!row.isConsistent()) {
                throw problem("", "the line has " + row.size() + " cells, the header " + columns.size());
            }
            Map<String, EnteredQuantity> levers = new LinkedHashMap<>();
            for (String column : columns) {
                if (column.startsWith(LEVER) && !text(column).isEmpty()) {
                    String lever = column.substring(LEVER.length()).strip();
                    if (levers.put(lever, number(column, Fields.LEVER_VALUE)) != null) {
                        throw problem(column, "the lever \"" + lever + "\" occurs twice");
                    }
                }
            }
            int apertures = numbers("apertures_mm", Fields.APERTURE).size();
            int shares = numbers("shares_percent", Fields.SIEVE_SHARE).size();
            if (apertures + shares > 0 && shares != apertures + 1) {
                throw problem("shares_percent", shares + " shares; " + apertures + " apertures need one more");
            }
            String id = needed("id");
            return new TestedProductEntry(
                    id,
                    needed("name"),
                    form(),
                    number("width_m", Fields.WORKING_WIDTH),
                    number("nitrogen_percent", Fields.NITROGEN_SHARE),
                    number("bulk_density_kg_per_l", Fields.BULK_DENSITY),
                    numbers("apertures_mm", Fields.APERTURE),
                    numbers("shares_percent", Fields.SIEVE_SHARE),
                    number("d50_mm", Fields.MEDIAN_DIAMETER),
                    number("tested_cv_percent", Fields.CV),
                    new SettingsEntries(
                            levers,
                            number("pto_rpm", Fields.PTO_SPEED),
                            number("height_over_crop_cm", Fields.HEIGHT_OVER_CROP),
                            number("tilt_deg", Fields.TILT),
                            UnknownKeys.NONE),
                    text("source"),
                    UnknownKeys.NONE);
        }

        private String text(String column) {
            return columns.contains(column) ? row.get(column) : "";
        }

        private String needed(String column) throws InputFileException {
            if (text(column).isEmpty()) {
                throw problem(column, "is empty");
            }
            return text(column);
        }

        private ProductForm form() throws InputFileException {
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

        private EnteredQuantity number(String column, FieldSpec spec) throws InputFileException {
            String word = text(column);
            return word.isEmpty() ? EnteredQuantity.EMPTY : checked(word, column, spec);
        }

        private List<EnteredQuantity> numbers(String column, FieldSpec spec) throws InputFileException {
            List<EnteredQuantity> numbers = new ArrayList<>();
            for (String word :
                    text(column).isEmpty() ? new String[0] : text(column).split("\\s+", -1)) {
                numbers.add(checked(word, column, spec));
            }
            return numbers;
        }

        private EnteredQuantity checked(String word, String column, FieldSpec spec) throws InputFileException {
            NumberReading reading = NumberText.read(word);
            if (!(reading instanceof NumberReading.Value value)) {
                throw problem(column, CsvText.notANumber(word, reading));
            }
            if (value.value() < spec.low() || value.value() > spec.high()) {
                throw problem(
                        column,
                        "\"" + word + "\"; allowed is "
                                + NumberFormats.decimals(spec.low(), spec.decimals(), Locale.ROOT) + " to "
                                + NumberFormats.decimals(spec.high(), spec.decimals(), Locale.ROOT) + " "
                                + spec.base().symbol());
            }
            return new EnteredQuantity(word, spec.base());
        }

        private InputFileException problem(String column, String what) {
            return new InputFileException(file, CsvText.place(line, column), what);
        }
    }
}
