package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetupJsonTest {

    private final SetupJson json = new SetupJson();

    @Test
    void anEmptySetupIsAlmostEmptyText() throws Exception {
        String text = json.write(SetupFile.of(Setup.EMPTY));
        assertThat(text).isEqualToIgnoringWhitespace("{\"evenfall\": 1, \"card\": {\"paper\": \"A5_LANDSCAPE\"}}");
        assertThat(json.read(text, "x").setup()).isEqualTo(Setup.EMPTY);
    }

    @Test
    void whatWasTypedSurvivesWithItsUnit() throws Exception {
        Setup setup = Setup.EMPTY
                .withStart(Setup.EMPTY
                        .start()
                        .withTramlineWidth(new EnteredQuantity("92", Unit.FT))
                        .withFarm("Thornmarsh Farm"))
                .withProduct(Setup.EMPTY
                        .product()
                        .withContainerFull(List.of(
                                new EnteredQuantity("0,98", Unit.KG),
                                EnteredQuantity.EMPTY,
                                new EnteredQuantity("about 1", Unit.KG))));
        String text = json.write(SetupFile.of(setup));
        assertThat(text).contains("\"92 ft\"").contains("\"0,98 kg\"").contains("\"about 1 kg\"");
        assertThat(json.read(text, "x").setup()).isEqualTo(setup);
    }

    @Test
    void unknownKeysSurviveAtEveryLevel() throws Exception {
        String text = """
                {"evenfall": 1, "$schema": "s", "colour": "blue",
                 "start": {"farm": "Thornmarsh Farm", "hill": [1, 2]},
                 "machine": {"levers": [{"label": "long vane", "paint": "red"}, {"label": "tilt"}]}}""";
        SetupFile file = json.read(text, "x");
        SetupFile changed =
                file.with(file.setup().withStart(file.setup().start().withCrop("winter wheat")));
        JsonNode again = new ObjectMapper().readTree(json.write(changed));
        assertThat(again.at("/$schema").textValue()).isEqualTo("s");
        assertThat(again.at("/colour").textValue()).isEqualTo("blue");
        assertThat(again.at("/start/hill/1").intValue()).isEqualTo(2);
        assertThat(again.at("/start/crop").textValue()).isEqualTo("winter wheat");
        assertThat(again.at("/machine/levers/0/paint").textValue()).isEqualTo("red");
    }

    @Test
    void aPlainJsonNumberIsNeverAskedBack() throws Exception {
        Setup setup = json.read("{\"evenfall\":1,\"product\":{\"containerVolume\":1.250}}", "x")
                .setup();
        assertThat(NumberText.read(setup.product().containerVolume().text())).isEqualTo(new NumberReading.Value(1.25));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"evenfall\":2}|/evenfall|allowed: 1",
                "{}|/evenfall|missing version",
                "{\"evenfall\":1,\"start\":{\"drivingPattern\":\"SIDEWAYS\"}}|/start/drivingPattern|BACK_AND_FORTH",
                "{\"evenfall\":1,\"start\":5}|/start|object",
                "{\"evenfall\":1,\"product\":{\"apertures\":{\"a\":1}}}|/product/apertures|list",
                "{\"evenfall\":1,\"product\":{\"nitrogen\":[1]}}|/product/nitrogen|number",
                "{\"evenfall\":1,\"yard\":{\"checks\":[{\"answer\":\"GOOD\"}]}}|/yard/checks/0|item",
                "[1]||object",
                "{\"evenfall\":1,|| line 1"
            })
    void aBadFileIsToldWithItsPlace(String text, String pointer, String told) {
        assertThatThrownBy(() -> json.read(text, "f.json"))
                .isInstanceOfSatisfying(InputFileException.class, problem -> {
                    assertThat(problem.place()).isEqualTo(pointer == null ? "" : pointer);
                    assertThat(problem.getMessage())
                            .startsWith("f.json")
                            .contains(told)
                            .doesNotContain("\n");
                });
    }

    @Test
    void aSaveIsWholeAndLeavesNothingBeside(@TempDir Path folder) throws Exception {
        SetupStore store = new SetupStore(json);
        Path file = folder.resolve("a.json");
        store.save(SetupFile.of(Setup.EMPTY), file);
        store.save(SetupFile.of(Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm("Thornmarsh Farm"))), file);
        assertThat(store.read(file).setup().start().farm()).isEqualTo("Thornmarsh Farm");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
        assertThatThrownBy(() -> store.read(folder.resolve("none.json"))).hasMessageContaining("no such file");
    }

    @Test
    void theLibraryReadsADecimalCommaAndAnyApertures() throws Exception {
        List<TestedProductEntry> library = LibraryCsv.read(
                "id;name;form;width_m;bulk_density_kg_per_l;apertures_mm;shares_percent;lever:long vane;pto_rpm\n"
                        + "u1;Granular urea;GRANULAR_UREA;28;0,76;2 3,15 4,5;4 44 47 5;12,5;540\n",
                "lib.csv");
        assertThat(library).hasSize(1);
        assertThat(library.get(0).settings().levers())
                .containsEntry("long vane", new EnteredQuantity("12,5", Unit.NONE));
        assertThat(library.get(0).apertures()).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "id,name\\na,b|line 1|width_m",
                "id,name,width_m\\na,b,28\\nc,,28|line 3, column name|empty",
                "id,name,width_m\\na,b,wide|line 2, column width_m|not a number",
                "id,name,width_m,form\\na,b,28,PEBBLES|line 2, column form|GRANULAR_UREA",
                "id,name,width_m\\na,b|line 2|cells",
                "id,name,width_m\\na,b,28\\n\\na,c,28|line 4, column id|stands twice",
                "id,name,width_m,colour\\na,b,28,red|line 1|column colour is not known",
                "id,name,width_m\\na,b,2800|line 2, column width_m|allowed is 6 to 60 m",
                "id,name,width_m,bulk_density_kg_per_l\\na,b,28,7.5|column bulk_density_kg_per_l|0.40 to 1.60 kg/L",
                "id,name,width_m,apertures_mm,shares_percent\\na,b,28,2 3.15,40 60|column shares_percent|need one more",
                "id\\tname\\twidth_m\\na\\tb\\twide|line 2, column width_m|not a number"
            })
    void aBadLineRefusesTheLibraryWithItsPlace(String text, String place, String told) {
        assertThatThrownBy(() -> LibraryCsv.read(text.replace("\\n", "\n").replace("\\t", "\t"), "lib.csv"))
                .isInstanceOf(InputFileException.class)
                .hasMessageContaining(place)
                .hasMessageContaining(told);
    }
}
