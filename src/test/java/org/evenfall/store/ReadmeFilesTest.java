package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.Readme;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders, files and columns that the README names. */
class ReadmeFilesTest {

    @TempDir
    private Path folder;

    @Test
    void theFoldersOfTheFarm() throws Exception {
        UserFolder user = UserFolder.of(Map.of(), "Linux", folder);
        assertThat(user.farm()).isEqualTo(folder.resolve("Evenfall"));
        assertThat(user.season(2027)).isEqualTo(user.farm().resolve("2027"));
        List<String> named = Readme.code(Readme.between("one folder for each season", "A setup has one owner"));
        assertThat(Stream.of(user.machines(), user.testedProducts(), user.cards(), user.sheets(), user.records())
                        .map(each -> user.farm().relativize(each).toString()))
                .containsExactlyElementsOf(named);
    }

    /** A machine and the products tested on it: two setups with nothing else typed in them. */
    @Test
    void machinesAndTestedProductsAreSetupsWithNothingElse() throws Exception {
        UserFolder user = new UserFolder(folder);
        SetupStore store = new SetupStore(new SetupJson());
        Setup demo = store.read(Path.of("demo", "setup.json"));
        new FarmShelf(store, user).keep(demo.withGuide(Setup.EMPTY.guide()));
        Setup machine = store.read(only(user.machines()));
        assertThat(machine).isEqualTo(Setup.EMPTY.withMachine(demo.machine()));
        assertThat(machine.machine().levers()).extracting(LeverEntry::label).isNotEmpty();
        Setup products = store.read(only(user.testedProducts()));
        assertThat(products.match().library()).isEqualTo(demo.match().library());
        assertThat(products.withMatch(Setup.EMPTY.match()).withMachine(Setup.EMPTY.machine()))
                .isEqualTo(Setup.EMPTY);
    }

    private static Path only(Path folder) throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> json =
                    files.filter(file -> file.toString().endsWith(".json")).toList();
            assertThat(json).hasSize(1);
            return json.get(0);
        }
    }

    /** Every column that the README names is read; a column that is not known would be refused. */
    @Test
    void theColumnsOfALibrary() throws Exception {
        String header = Readme.code(Readme.between("CSV with the header", "; decimal comma or dot"))
                .get(0)
                .replace(" ", "")
                .replace("…,", "");
        List<String> columns = List.of(header.split(","));
        assertThat(columns).hasSizeGreaterThan(8).contains("lever:LABEL");
        Map<String, String> values = Map.of(
                "id",
                "u1",
                "name",
                "Urea",
                "form",
                "GRANULAR_UREA",
                "apertures_mm",
                "2 4",
                "shares_percent",
                "5 90 5",
                "width_m",
                "28",
                "bulk_density_kg_per_l",
                "0.76",
                "d50_mm",
                "3.1",
                "lever:LABEL",
                "7");
        String line = columns.stream().map(values::get).collect(Collectors.joining(","));
        TestedProductEntry read =
                LibraryCsv.read(header + "\n" + line + "\n", "library.csv").get(0);
        assertThat(read.settings().levers()).containsOnlyKeys("LABEL");
        assertThat(read.apertures()).hasSize(2);
        assertThat(Arrays.asList(read.width(), read.bulkDensity(), read.d50())).noneMatch(value -> value.isBlank());
    }

    @Test
    void theExampleOfATypedValueIsReadAndAPlainNumberToo() throws Exception {
        assertThat(Readme.between("exactly what was typed with its unit", "Described by"))
                .contains("\"0,76 kg/L\"");
        Setup typed = new SetupJson()
                .read(
                        "{\"evenfall\": 1, \"rate\": {\"plan\": {\"price\": 563}},"
                                + " \"match\": {\"library\": [{\"id\": \"a\", \"bulkDensity\": \"0,76 kg/L\"}]}}",
                        "test");
        assertThat(typed.match().library().get(0).bulkDensity()).hasToString("0,76 kg/L");
        assertThat(typed.rate().plan().price().text()).isEqualTo("563");
        assertThat(new SetupJson().write(typed)).contains("\"0,76 kg/L\"");
    }
}
