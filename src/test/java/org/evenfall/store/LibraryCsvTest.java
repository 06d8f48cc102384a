package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LibraryCsvTest {

    private static List<TestedProductEntry> read(String text) throws InputFileException {
        return LibraryCsv.read(text.replace("\\n", "\n").replace("\\t", "\t"), "lib.csv");
    }

    private static EnteredQuantity typed(String number, Unit unit) {
        return new EnteredQuantity(number, unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t"})
    void everyColumnIsReadInItsUnit(String separator) throws Exception {
        String text =
                ("source;tilt_deg;height_over_crop_cm;pto_rpm;tested_cv_percent;d50_mm;shares_percent;apertures_mm;"
                                + "bulk_density_kg_per_l;nitrogen_percent;width_m;form;name;id;lever:long vane;lever: tilt arm\n"
                                + "handbook p. 3;-1,5;74;541;8,5;3,3;4 44,5 46,5 5;2 3,15 4,5;0,76;46;27;granular_urea;Urea, coated;u1;12,5;-3\n"
                                + ";;;;;;;;;;24;;Plain;u2;;4\n")
                        .replace(";", separator);
        List<TestedProductEntry> library = LibraryCsv.read(text, "lib.csv");
        assertThat(library).hasSize(2);
        TestedProductEntry first = library.get(0);
        assertThat(first.id()).isEqualTo("u1");
        assertThat(first.name()).isEqualTo("Urea, coated");
        assertThat(first.form()).isEqualTo(ProductForm.GRANULAR_UREA);
        assertThat(first.width()).isEqualTo(typed("27", Unit.M));
        assertThat(first.nitrogen()).isEqualTo(typed("46", Unit.PERCENT));
        assertThat(first.bulkDensity()).isEqualTo(typed("0,76", Unit.KG_PER_L));
        assertThat(first.apertures())
                .containsExactly(typed("2", Unit.MM), typed("3,15", Unit.MM), typed("4,5", Unit.MM));
        assertThat(first.shares())
                .containsExactly(
                        typed("4", Unit.PERCENT),
                        typed("44,5", Unit.PERCENT),
                        typed("46,5", Unit.PERCENT),
                        typed("5", Unit.PERCENT));
        assertThat(first.d50()).isEqualTo(typed("3,3", Unit.MM));
        assertThat(first.testedCv()).isEqualTo(typed("8,5", Unit.PERCENT));
        assertThat(first.settings().ptoSpeed()).isEqualTo(typed("541", Unit.RPM));
        assertThat(first.settings().heightOverCrop()).isEqualTo(typed("74", Unit.CM));
        assertThat(first.settings().tilt()).isEqualTo(typed("-1,5", Unit.DEG));
        assertThat(first.settings().levers())
                .containsExactly(
                        Map.entry("long vane", typed("12,5", Unit.NONE)),
                        Map.entry("tilt arm", typed("-3", Unit.NONE)));
        assertThat(first.source()).isEqualTo("handbook p. 3");
        assertThat(first.unknownKeys()).isEqualTo(UnknownKeys.NONE);
        assertThat(library.get(1))
                .isEqualTo(TestedProductEntry.EMPTY
                        .withId("u2")
                        .withName("Plain")
                        .withWidth(typed("24", Unit.M))
                        .withSettings(TestedProductEntry.EMPTY
                                .settings()
                                .withLevers(Map.of("tilt arm", typed("4", Unit.NONE)))));
    }

    @Test
    void aByteOrderMarkAndAHeaderAlone() throws Exception {
        assertThat(read("\ufeffid,name,width_m\na,b,28\n")).hasSize(1);
        assertThat(read("id,name,width_m\n")).isEmpty();
    }

    @Test
    void theDemoTableIsRead() throws Exception {
        assertThat(LibraryCsv.read(Files.readString(Path.of("demo", "library.csv")), "library.csv"))
                .hasSizeGreaterThan(1)
                .allMatch(entry -> !entry.width().isBlank());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "id,name\\na,b|line 1|column width_m is missing",
                "name,width_m\\nb,28|line 1|column id is missing",
                "id,width_m\\na,28|line 1|column name is missing",
                "id,name,width_m,colour\\na,b,28,red|line 1|column colour is not known",
                "id,name,width_m,name\\na,b,28,c|line 1|column name occurs twice",
                "id,name,width_m\\n,b,28|line 2, column id|is empty",
                "id,name,width_m\\na,b,28\\nc,,28|line 3, column name|is empty",
                "id,name,width_m\\na,b,28\\nc,,28\\n|line 3, column name|is empty",
                "id,name,width_m\\na,b,28\\n\\na,c,28|line 4, column id|\"a\" occurs twice",
                "id,name,width_m\\na,b,wide|line 2, column width_m|\"wide\" is not a number",
                "id\\tname\\twidth_m\\na\\tb\\twide|line 2, column width_m|\"wide\" is not a number",
                "id;name;width_m\\na;b;28\\nc;d;1.250|line 3, column width_m|\"1.250\" could mean a thousand",
                "id,name,width_m\\na,b|line 2|the line has 2 cells, the header 3",
                "id,name,width_m\\na,b,28,5|line 2|the line has 4 cells, the header 3",
                "id,name,width_m,form\\na,b,28,PEBBLES|line 2, column form|\"PEBBLES\" is not one of [UNANSWERED, GRANULAR_UREA",
                "id,name,width_m,apertures_mm,shares_percent\\na,b,28,2 3.15,40 60|line 2, column shares_percent|2 shares; 2 apertures need one more",
                "id,name,width_m,apertures_mm\\na,b,28,2|line 2, column shares_percent|0 shares; 1 apertures need one more",
                "id,name,width_m,shares_percent\\na,b,28,40 60|line 2, column shares_percent|2 shares; 0 apertures need one more",
                "id,name,width_m,apertures_mm,shares_percent\\na,b,28,2 x,40 50 10|line 2, column apertures_mm|\"x\" is not a number",
                "id,name,width_m,lever:vane\\na,b,28,high|line 2, column lever:vane|\"high\" is not a number",
                "id,name,width_m,lever:vane,lever: vane\\na,b,28,1,2|line 2, column lever: vane|the lever \"vane\" occurs twice",
                "id,name,width_m\\n\"a\"b,c,28||not a table"
            })
    void oneWrongLineRefusesTheTableWithItsPlace(String text, String place, String problem) {
        assertThatThrownBy(() -> read(text)).isInstanceOfSatisfying(InputFileException.class, refusal -> {
            assertThat(refusal.file()).isEqualTo("lib.csv");
            assertThat(refusal.place()).isEqualTo(place == null ? "" : place);
            assertThat(refusal.problem()).startsWith(problem);
        });
    }

    /** One share with no aperture is a sample in one class; it needs no aperture. */
    @Test
    void oneShareAndNoAperture() throws Exception {
        assertThat(read("id,name,width_m,shares_percent\na,b,28,100").get(0).shares())
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "width_m, 5.99, 6, 6.01, 59.99, 60, 60.01",
        "nitrogen_percent, 0.99, 1, 1.01, 59.99, 60, 60.01",
        "bulk_density_kg_per_l, 0.39, 0.4, 0.41, 1.59, 1.6, 1.61",
        "d50_mm, 0.49, 0.5, 0.51, 7.99, 8, 8.01",
        "tested_cv_percent, -0.01, 0, 0.01, 99.99, 100, 100.01",
        "pto_rpm, 199.99, 200, 200.01, 1199.99, 1200, 1200.01",
        "height_over_crop_cm, 9.99, 10, 10.01, 199.99, 200, 200.01",
        "tilt_deg, -20.01, -20, -19.99, 19.99, 20, 20.01",
        "lever:vane, -1000.01, -1000, -999.99, 9999.99, 10000, 10000.01"
    })
    void limitsAtBelowAndAbove(
            String column, String below, String low, String aboveLow, String belowHigh, String high, String above) {
        for (String within : List.of(low, aboveLow, belowHigh, high)) {
            assertThatCode(() -> read(row(column, within))).as(within).doesNotThrowAnyException();
        }
        for (String outside : List.of(below, above)) {
            assertThatThrownBy(() -> read(row(column, outside)))
                    .as(outside)
                    .hasMessageStartingWith("lib.csv: line 2, column " + column + ": \"" + outside + "\"; allowed is ");
        }
    }

    private static String row(String column, String number) {
        return column.equals("width_m")
                ? "id,name,width_m\na,b," + number
                : "id,name,width_m," + column + "\na,b,28," + number;
    }

    @ParameterizedTest
    @CsvSource({
        "0.09, 50, false",
        "0.1, 50, true",
        "20, 50, true",
        "20.01, 50, false",
        "2, 0, true",
        "2, -0.01, false",
        "2, 100, true",
        "2, 100.01, false"
    })
    void limitsOfSieveClasses(String aperture, String share, boolean allowed) {
        String text = "id,name,width_m,apertures_mm,shares_percent\na,b,28," + aperture + "," + share + " 50";
        if (allowed) {
            assertThatCode(() -> read(text)).doesNotThrowAnyException();
        } else {
            assertThatThrownBy(() -> read(text)).hasMessageContaining("; allowed is ");
        }
    }

    @Test
    void theLimitsAreNamedWithTheirUnit() {
        assertThatThrownBy(() -> read("id,name,width_m\na,b,2800")).hasMessageContaining("allowed is 6 to 60 m");
        assertThatThrownBy(() -> read("id,name,width_m,bulk_density_kg_per_l\na,b,28,7.5"))
                .hasMessageContaining("0.4 to 1.6 kg/L");
    }
}
