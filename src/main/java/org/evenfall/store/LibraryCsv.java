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
import org.evenfall.finding.Arg;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Quoted;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Range;
import org.evenfall.setup.path.SettingsPaths;
import org.evenfall.setup.path.ShownLimits;

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
                            Quoted.of(row.get("id")) + " occurs twice");
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
                    if (levers.put(lever, number(column, SettingsPaths.LEVERS)) != null) {
                        throw problem(column, "the lever " + Quoted.of(lever) + " occurs twice");
                    }
                }
            }
            int apertures = numbers("apertures_mm", MatchPaths.TESTED_APERTURES).size();
            int shares = numbers("shares_percent", MatchPaths.TESTED_SHARES).size();
            if (apertures + shares > 0 && shares != apertures + 1) {
                throw problem("shares_percent", shares + " shares; " + apertures + " apertures need one more");
            }
            String id = needed("id");
            return new TestedProductEntry(
                    id,
                    needed("name"),
                    form(),
                    number("width_m", MatchPaths.TESTED_WIDTH),
                    number("nitrogen_percent", MatchPaths.TESTED_NITROGEN),
                    number("bulk_density_kg_per_l", MatchPaths.TESTED_BULK_DENSITY),
                    numbers("apertures_mm", MatchPaths.TESTED_APERTURES),
                    numbers("shares_percent", MatchPaths.TESTED_SHARES),
                    number("d50_mm", MatchPaths.TESTED_D50),
                    number("tested_cv_percent", MatchPaths.TESTED_TESTED_CV),
                    new SettingsEntries(
                            levers,
                            number("pto_rpm", SettingsPaths.PTO_SPEED),
                            number("height_over_crop_cm", SettingsPaths.HEIGHT_OVER_CROP),
                            number("tilt_deg", SettingsPaths.TILT),
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
                    .orElseThrow(() -> problem(
                            "form", Quoted.of(word) + " is not one of " + Arrays.toString(ProductForm.values())));
        }

        private EnteredQuantity number(String column, Measured entry) throws InputFileException {
            String word = text(column);
            return word.isEmpty() ? EnteredQuantity.EMPTY : checked(word, column, entry);
        }

        private List<EnteredQuantity> numbers(String column, Measured entry) throws InputFileException {
            List<EnteredQuantity> numbers = new ArrayList<>();
            for (String word :
                    text(column).isEmpty() ? new String[0] : text(column).split("\\s+", -1)) {
                numbers.add(checked(word, column, entry));
            }
            return numbers;
        }

        private EnteredQuantity checked(String word, String column, Measured entry) throws InputFileException {
            NumberReading reading = NumberText.read(word);
            if (!(reading instanceof NumberReading.Value value)) {
                throw problem(column, CsvText.notANumber(word, reading));
            }
            Range range = entry.range(Setup.EMPTY);
            Unit unit = range.shown();
            if (!range.possible().contain(unit.to(range.core(), value.value()))) {
                ShownLimits limits = range.in(unit, range.possible());
                throw problem(
                        column,
                        Quoted.of(word) + "; allowed is " + limit(limits.low()) + " to " + limit(limits.high()) + " "
                                + unit.symbol());
            }
            return new EnteredQuantity(word, unit);
        }

        private static String limit(Arg.Figure figure) {
            return NumberFormats.decimals(figure.value(), figure.decimals(), Locale.ROOT);
        }

        private InputFileException problem(String column, String what) {
            return new InputFileException(file, CsvText.place(line, column), what);
        }
    }
}
