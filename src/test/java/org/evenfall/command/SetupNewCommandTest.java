package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.NextSeason;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetupNewCommandTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    private Commands commands;

    @BeforeEach
    void fresh() {
        commands = new Commands(folder);
    }

    private Setup written(String name) throws Exception {
        return new SetupJson().read(Files.readString(folder.resolve(name)), name);
    }

    /** The names are published: programs of others read them. */
    @Test
    void theNextSeasonOfTheDemo() throws Exception {
        Commands.Answer answer = commands.run("setup", "new", "--from", DEMO, "--out", "new.json", "--json");
        assertThat(answer.code()).as(answer.err()).isZero();
        JsonNode json = answer.json();
        List<String> names = new ArrayList<>();
        json.fieldNames().forEachRemaining(names::add);
        assertThat(names).containsExactly("file", "season", "kept", "open");
        assertThat(json.get("file").textValue())
                .isEqualTo(folder.resolve("new.json").toString());
        assertThat(json.get("season").intValue()).isEqualTo(2028);
        assertThat(texts(json.get("kept")))
                .containsExactly("FARM", "TRAMLINES", "MACHINE", "TESTED_PRODUCTS", "PLAN", "EQUIPMENT", "PEOPLE");
        assertThat(texts(json.get("open")))
                .containsExactly(
                        "CROP",
                        "PRODUCT",
                        "START_SETTINGS",
                        "MACHINE_CHECK",
                        "HEIGHT",
                        "RATE_CHECK",
                        "TRAY_TEST",
                        "CARD");
        Setup demo = new SetupJson().read(Files.readString(Path.of(DEMO)), "demo");
        assertThat(written("new.json")).isEqualTo(NextSeason.of(demo, Assessor.assess(demo), 2028));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.textValue()));
        return texts;
    }

    @Test
    void oneLineToRead() throws Exception {
        Commands.Answer answer =
                commands.run("setup", "new", "--from", DEMO, "--season", "2030", "--out", "later/new.json");
        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines())
                .containsExactly(folder.resolve("later/new.json")
                        + ": season 2030. Kept: farm and field, tramlines, machine, tested products, plan of the rate,"
                        + " trays and container, names for the card. To measure or answer again: crop, product,"
                        + " settings to start from, machine check, height over the crop, rate check, tray test, card.");
        assertThat(written("later/new.json").start().season()).isEqualTo("2030");
    }

    /** Of an empty setup nothing is kept. */
    @Test
    void whatIsNotThereIsNotKept() throws Exception {
        Files.writeString(folder.resolve("empty.json"), "{\"evenfall\": 1}");
        JsonNode json = commands.run("setup", "new", "--from", "empty.json", "--out", "new.json", "--json")
                .json();
        assertThat(json.get("kept")).isEmpty();
        assertThat(json.get("season").intValue()).isEqualTo(2028);
    }

    @Test
    void aFileThatIsThereStays() throws Exception {
        Path own = Files.copy(Path.of(DEMO), folder.resolve("own.json"));
        Files.writeString(folder.resolve("other.json"), "kept");
        assertThat(wrong("--from", "own.json", "--out", "other.json")).contains("other.json is there");
        assertThat(wrong("--from", "own.json", "--out", "own.json")).contains("own.json is there");
        assertThat(wrong("--from", "own.json", "--out", "./own.json")).contains("own.json is there");
        assertThat(own).hasSameTextualContentAs(Path.of(DEMO));
        assertThat(folder.resolve("other.json")).hasContent("kept");
    }

    @Test
    void aWrongCallWritesNothing() throws Exception {
        assertThat(wrong("--from", "none.json", "--out", "new.json")).contains("none.json: no such file");
        assertThat(wrong("--from", DEMO)).contains("--out");
        assertThat(wrong("--out", "new.json")).contains("--from");
        assertThat(wrong("--from", DEMO, "--out", "new.json", "--season", "28")).contains("allowed is 2000 to 2100");
        assertThat(wrong("--from", DEMO, "--out", "new.json", "--season", "next"))
                .contains("--season");
        Files.writeString(folder.resolve("blocked"), "a file, no folder");
        assertThat(wrong("--from", DEMO, "--out", "blocked/new.json"))
                .contains("new.json: cannot be written; nothing was changed");
        assertThat(folder.resolve("new.json")).doesNotExist();
        assertThat(commands.run("setup").code()).isEqualTo(2);
    }

    private String wrong(String... options) {
        List<String> call = new ArrayList<>(List.of("setup", "new"));
        call.addAll(List.of(options));
        Commands.Answer answer = commands.run(call.toArray(new String[0]));
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.out()).isEmpty();
        return answer.err();
    }

    /** Of a revision {@code assess --json} says what was checked again; of a first card nothing. */
    @Test
    void whatWasCheckedAgainIsPublished() throws Exception {
        ObjectNode setup = (ObjectNode) new SetupJson().mapper().readTree(Files.readString(Path.of(DEMO)));
        assertThat(commands.assess(setup).get("rechecked").isNull()).isTrue();
        ((ObjectNode) setup.get("card")).put("revision", 2).put("previousDate", "2027-03-17");
        JsonNode since = commands.assess(setup).get("rechecked");
        assertThat(since.get("revision").intValue()).isEqualTo(2);
        assertThat(since.get("previousDate").textValue()).isEqualTo("2027-03-17");
        assertThat(since.at("/parts/0").toString())
                .isEqualTo("{\"what\":\"PRODUCT\",\"state\":\"HOLDS\",\"date\":\"\"}");
        assertThat(since.at("/parts/3").toString())
                .isEqualTo("{\"what\":\"RATE\",\"state\":\"AGAIN\",\"date\":\"2027-03-18\"}");
        assertThat(since.at("/parts/4/what").textValue()).isEqualTo("TRAY_TEST");
    }
}
