package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.LeverEntry;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SetupJsonTest {

    private final SetupJson json = new SetupJson();

    @Test
    void anEmptySetupIsAlmostEmptyText() throws Exception {
        String text = json.write(Setup.EMPTY);
        assertThat(text).isEqualToIgnoringWhitespace("{\"evenfall\": 1, \"card\": {\"paper\": \"A5_LANDSCAPE\"}}");
        assertThat(json.read(text, "x")).isEqualTo(Setup.EMPTY);
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
        String text = json.write(setup);
        assertThat(text).contains("\"92 ft\"").contains("\"0,98 kg\"").contains("\"about 1 kg\"");
        assertThat(json.read(text, "x")).isEqualTo(setup);
    }

    /** A JSON number has one meaning, also where its figures could be a group of thousands. */
    @ParameterizedTest
    @CsvSource({
        "1.250, 1.25",
        "1.125, 1.125",
        "-1.125, -1.125",
        "1125, 1125",
        "0.125, 0.125",
        "28, 28",
        "1e3, 1000",
        "1e30, 1e30",
        "1e-30, 1e-30"
    })
    void aPlainJsonNumberIsReadAsThatNumber(String number, double value) throws Exception {
        Setup setup = json.read("{\"evenfall\":1,\"product\":{\"containerVolume\":" + number + "}}", "x");
        assertThat(NumberText.read(setup.product().containerVolume().text())).isEqualTo(new NumberReading.Value(value));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e31", "1e-31", "-1E+400", "1E-400"})
    void aNumberThatNobodyTypesIsKeptShort(String number) throws Exception {
        Setup setup = json.read("{\"evenfall\":1,\"product\":{\"nitrogen\":" + number + "}}", "x");
        assertThat(setup.product().nitrogen().text()).hasSizeLessThan(20);
        assertThat(NumberText.read(setup.product().nitrogen().text())).isInstanceOf(NumberReading.NotANumber.class);
    }

    /** A text that is the name of an unanswered choice is a text all the same. */
    @Test
    void aFarmNamedLikeAnUnansweredChoiceIsKept() throws Exception {
        Setup setup = Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm("UNANSWERED"));
        assertThat(json.read(json.write(setup), "x")).isEqualTo(setup);
    }

    @Test
    void aNumberInPlaceOfATextIsTaken() throws Exception {
        Setup setup = json.read("{\"evenfall\":1,\"start\":{\"season\":2027},\"card\":{\"revision\":\"2\"}}", "x");
        assertThat(setup.start().season()).isEqualTo("2027");
        assertThat(setup.card().revision()).isEqualTo(2);
    }

    @Test
    void explicitNullsAreNotTyped() throws Exception {
        String text = "{\"evenfall\":1,\"start\":null,\"machine\":{\"levers\":[null],\"name\":null},"
                + "\"product\":{\"containerFull\":[\"1 kg\",null]},\"card\":{\"paper\":null,\"revision\":null}}";
        Setup setup = json.read(text, "x");
        assertThat(setup.start()).isEqualTo(Setup.EMPTY.start());
        assertThat(setup.machine().levers()).containsExactly(LeverEntry.EMPTY);
        assertThat(setup.product().containerFull())
                .containsExactly(new EnteredQuantity("1", Unit.KG), EnteredQuantity.EMPTY);
        assertThat(setup.card()).isEqualTo(Setup.EMPTY.card());
    }

    @Test
    void aUnitAloneIsNothingTyped() throws Exception {
        Setup setup = Setup.EMPTY.withStart(Setup.EMPTY.start().withTramlineWidth(new EnteredQuantity("", Unit.FT)));
        assertThat(json.write(setup)).isEqualTo(json.write(Setup.EMPTY));
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
                "{\"evenfall\":1,\"yard\":{\"checks\":[{\"answer\":\"GOOD\"}]}}|/yard/checks/0|\"item\" is missing; expected one of [GUARDS",
                "{\"evenfall\":1,\"yard\":{\"checks\":[{\"item\":\"DISCS\"},null]}}|/yard/checks/1|item",
                "{\"evenfall\":1,\"yard\":{\"checks\":[{\"item\":\"WINGS\"}]}}|/yard/checks/0/item|\"WINGS\" is not one of [GUARDS",
                "{\"evenfall\":\"1\"}|/evenfall|unknown version \"1\"; allowed: 1",
                "{\"evenfall\":1.0}|/evenfall|unknown version",
                "{\"evenfall\":null}|/evenfall|unknown version null",
                "{\"evenfall\":1,\"start\":{\"drivingPattern\":1}}|/start/drivingPattern|one of [UNANSWERED",
                "{\"evenfall\":1,\"start\":{\"drivingPattern\":\"back_and_forth\"}}|/start/drivingPattern|BACK_AND_FORTH",
                "{\"evenfall\":1,\"start\":{\"farm\":{}}}|/start/farm|expected a text",
                "{\"evenfall\":1,\"start\":[]}|/start|expected an object",
                "{\"evenfall\":1,\"card\":{\"revision\":1.5}}|/card/revision|expected a whole number",
                "{\"evenfall\":1,\"card\":{\"revision\":99999999999}}|/card/revision|out of range",
                "{\"evenfall\":1,\"card\":{\"revision\":\"two\"}}|/card/revision|expected a whole number",
                "{\"evenfall\":1,\"product\":{\"nitrogen\":true}}|/product/nitrogen|number",
                "{\"evenfall\":1,\"rate\":{\"bucketTests\":[{},{\"left\":[\"1 kg\",{}]}]}}|/rate/bucketTests/1/left/1|number",
                "{\"evenfall\":1,\"match\":{\"settings\":{\"levers\":{\"a/b~c\":[]}}}}|/match/settings/levers/a~1b~0c|number",
                "{\"evenfall\":1,\"start\":{\"farm\":\"a\",\"farm\":\"b\"}}||line 1, column",
                "{\"evenfall\":1,\"evenfall\":1}||Duplicate",
                "{\"evenfall\":1} x||line 1",
                "null||object",
                "||object",
                "[1]||object",
                "{\"evenfall\":1,|| line 1"
            })
    void aWrongFileIsRefusedWithItsPlace(@Nullable String text, @Nullable String place, String problem) {
        assertThatThrownBy(() -> json.read(text == null ? "" : text, "f.json"))
                .isInstanceOfSatisfying(InputFileException.class, refusal -> {
                    assertThat(refusal.place()).isEqualTo(place == null ? "" : place);
                    assertThat(refusal.file()).isEqualTo("f.json");
                    assertThat(refusal.getMessage())
                            .startsWith("f.json")
                            .contains(problem)
                            .doesNotContain("\n");
                });
    }

    @Test
    void aSaveReplacesTheFileAndLeavesNoOther(@TempDir Path folder) throws Exception {
        SetupStore store = new SetupStore(json);
        Path file = folder.resolve("a.json");
        store.save(Setup.EMPTY, file);
        store.save(Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm("Thornmarsh Farm")), file);
        assertThat(store.read(file).start().farm()).isEqualTo("Thornmarsh Farm");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
        assertThatThrownBy(() -> store.read(folder.resolve("none.json"))).hasMessageContaining("no such file");
    }

    @Test
    void whatCannotBeReadIsRefusedWithItsFile(@TempDir Path folder) throws Exception {
        SetupStore store = new SetupStore(json);
        Path binary = Files.write(folder.resolve("b.json"), new byte[] {'{', (byte) 0xff, (byte) 0xfe});
        assertThatThrownBy(() -> store.read(binary))
                .isInstanceOf(InputFileException.class)
                .hasMessage(binary + ": not a text file in UTF-8");
        assertThatThrownBy(() -> store.read(folder))
                .isInstanceOf(InputFileException.class)
                .hasMessageContaining("cannot be read");
    }
}
