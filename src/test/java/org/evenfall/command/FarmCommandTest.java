package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.PassEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmShelf;
import org.evenfall.store.IssuedCards;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder of a farm from the command line. */
class FarmCommandTest {

    private final SetupStore store = new SetupStore(new SetupJson());

    @TempDir
    private Path folder;

    private Path farm;
    private UserFolder user;
    private Commands commands;

    @BeforeEach
    void farm() throws Exception {
        farm = folder.resolve("farm");
        user = new UserFolder(folder.resolve("settings"), farm);
        commands = new Commands(folder);
        Setup demo = store.read(Path.of("demo", "setup.json"));
        Setup real = demo.withGuide(Setup.EMPTY.guide());
        store.save(real, user.season(2027).resolve("setup.json"));
        store.save(
                demo.withStart(demo.start().withFarm("Esc\u001b[31m")),
                user.season(2026).resolve("old.json"));
        new FarmShelf(store, user).keep(real);
        Path card = Files.createDirectories(user.cards()).resolve("card.pdf");
        Files.writeString(card, "card");
        IssuedCards cards = new IssuedCards(user);
        cards.add(card, user.season(2027).resolve("setup.json"), real, "AAAA", Instant.EPOCH);
        cards.add(card, user.season(2027).resolve("setup.json"), real, "AAAA", Instant.EPOCH);
    }

    private JsonNode json(String... arguments) {
        return commands.run(arguments).json();
    }

    @Test
    void listNamesAllThatIsThere() throws Exception {
        String text = commands.run("farm", farm.toString(), "list").out();
        assertThat(text)
                .contains("Setups\n  2027/setup.json  ", "2026/old.json", "Machines\n  ", "Tested products\n  ")
                .contains("Cards issued\n  card.pdf", "replaces cards/card.pdf")
                .doesNotContain("\u001b");
        JsonNode json = json("farm", farm.toString(), "list", "--json");
        assertThat(json.at("/setups/0/file").asText()).isEqualTo("2027/setup.json");
        assertThat(json.at("/setups/0/nextStep").asText()).isEqualTo("CARD");
        assertThat(json.at("/setups/1/season").asInt()).isEqualTo(2026);
        assertThat(json.at("/machines")).hasSize(1);
        assertThat(json.at("/testedProducts/0/count").asInt()).isPositive();
        assertThat(json.at("/cards/1/replaces").asText()).isEqualTo("cards/card.pdf");
    }

    @Test
    void aFileThatCannotBeReadIsListedWithItsProblem() throws Exception {
        Files.writeString(user.season(2027).resolve("setup.json"), "[]");
        assertThat(json("farm", farm.toString(), "list", "--json")
                        .at("/setups/0/problem")
                        .asText())
                .isEqualTo("expected one JSON object");
        assertThat(commands.run("farm", farm.toString(), "list").out())
                .contains("2027/setup.json  expected one JSON object");
    }

    @Test
    void checkFindsAndRecovers() throws Exception {
        assertThat(commands.run("farm", farm.toString(), "check").code()).isZero();
        Path setup = user.season(2027).resolve("setup.json");
        Path earlier = Files.createDirectories(setup.resolveSibling("earlier")).resolve("setup.1.json");
        Files.copy(setup, earlier);
        Files.writeString(setup, "{");
        assertThat(commands.run("farm", farm.toString(), "check").code()).isEqualTo(1);
        JsonNode problem = json("farm", farm.toString(), "check", "--json").at("/problems/0");
        assertThat(problem.get("file").asText()).isEqualTo("2027/setup.json");
        assertThat(problem.get("problem").asText()).isEqualTo("damaged");
        assertThat(problem.get("soundSince").asText()).isNotEmpty();
        assertThat(problem.get("recovered").asBoolean()).isFalse();
        assertThat(setup).hasContent("{");
        assertThat(commands.run("farm", farm.toString(), "check", "--recover").out())
                .startsWith("2027/setup.json is damaged and cannot be read. (not valid JSON")
                .contains("was brought back");
        assertThat(setup).hasSameTextualContentAs(earlier);
        assertThat(commands.run("farm", farm.toString(), "check").out()).isEqualTo("Every file is sound.\n");
    }

    private Setup logged(Setup setup) {
        return setup.withLog(setup.log()
                .withPasses(List.of(PassEntry.EMPTY
                        .withDate("2027-03-20")
                        .withField("Far Bank")
                        .withArea(EnteredQuantity.parse("8 ha"))
                        .withProductDrawn(EnteredQuantity.parse("1,4 t")))));
    }

    @Test
    void recordWritesTheTableAndThePages() throws Exception {
        Path setup = user.season(2027).resolve("setup.json");
        store.save(logged(store.read(setup)), setup);
        String table = commands.run("farm", farm.toString(), "record", "--season", "2027")
                .out();
        assertThat(table.lines()).hasSize(2);
        assertThat(table).contains("Far Bank").contains("1400").contains("175");
        Commands.Answer csv =
                commands.run("farm", farm.toString(), "record", "--season", "2027", "--out", "record.csv");
        assertThat(csv.out()).endsWith("record.csv\n");
        assertThat(Files.readString(folder.resolve("record.csv"))).isEqualTo(table.replace("\n", "\r\n"));
        JsonNode json = json("farm", farm.toString(), "record", "--season", "2027", "--out", "record.pdf", "--json");
        assertThat(json.at("/setups/0").asText()).isEqualTo("setup.json");
        assertThat(json.at("/file").asText()).endsWith("record.pdf");
        assertThat(Files.readString(folder.resolve("record.pdf"), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void recordNamesWhatItLeavesOut() throws Exception {
        Files.writeString(user.season(2027).resolve("broken.json"), "{");
        Commands.Answer answer = commands.run("farm", farm.toString(), "record", "--season", "2027", "--json");
        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.err()).contains("broken.json: not valid JSON").hasLineCount(1);
        assertThat(answer.json().at("/leftOut/0").asText()).isEqualTo("broken.json");
        assertThat(answer.json().at("/csv").asText()).startsWith("date,");
    }

    @Test
    void recordRefusesWhatIsNoSeasonOrEnding() {
        for (String season : new String[] {"1999", "2101"}) {
            Commands.Answer answer = commands.run("farm", farm.toString(), "record", "--season", season);
            assertThat(answer.code()).isEqualTo(2);
            assertThat(answer.err()).contains("--season: " + season + "; allowed are 2000 to 2100");
        }
        assertThat(commands.run("farm", farm.toString(), "record", "--season", "2000")
                        .code())
                .isZero();
        assertThat(commands.run("farm", farm.toString(), "record", "--season", "2100")
                        .code())
                .isZero();
        assertThat(commands.run("farm", farm.toString(), "record", "--season", "2027", "--out", "r.txt")
                        .err())
                .contains(".csv or .pdf");
        assertThat(folder.resolve("r.txt")).doesNotExist();
    }

    @Test
    void whatIsNoFolderIsRefused() {
        assertThat(commands.run("farm", folder.resolve("none").toString(), "list")
                        .code())
                .isEqualTo(2);
        assertThat(commands.run("farm", farm.toString()).code()).isEqualTo(2);
    }
}
