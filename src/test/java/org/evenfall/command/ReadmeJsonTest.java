package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.evenfall.Readme;
import org.evenfall.setup.Rechecked;
import org.evenfall.store.FarmProblem;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.EvennessVerdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The names of the JSON in the README are those that the commands print. */
class ReadmeJsonTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    private JsonNode run(String... args) {
        return new Commands(folder).run(args).json();
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static List<String> names(Enum<?>[] constants) {
        return Stream.of(constants).map(Enum::name).toList();
    }

    /** The advice after the first, uneven test of the demo: a lever is moved. */
    private JsonNode move() throws Exception {
        ObjectNode setup = (ObjectNode) new ObjectMapper().readTree(Files.readString(Path.of(DEMO)));
        ((ArrayNode) setup.at("/trays/tests")).remove(1);
        Files.writeString(folder.resolve("first.json"), setup.toString());
        return run("advise", "first.json", "--json");
    }

    @Test
    void adviseHasTheNamesOfTheReadmeAndNoOther() throws Exception {
        String section = Readme.between("`advise` answers", "These names stay.");
        String form = Readme.code(section).stream()
                .filter(code -> code.startsWith("{"))
                .findFirst()
                .orElseThrow();
        JsonNode answer = move();
        assertThat(Readme.keys(form))
                .isNotEmpty()
                .allSatisfy(key -> assertThat(answer.findValue(key)).as(key).isNotNull());
        List<String> named = new ArrayList<>(Readme.keys(form));
        named.addAll(Readme.code(section));
        assertThat(named).containsAll(keys(answer)).containsAll(keys(answer.get("advice")));
        assertThat(named).containsAll(keys(answer.at("/advice/moves/0")));
    }

    @Test
    void theKindsAreThoseOfTheProgram() throws Exception {
        assertThat(Readme.constants(Readme.between("`kind` is one of", "; `moves` is empty")))
                .containsExactlyInAnyOrderElementsOf(names(AdviceKind.values()));
    }

    @Test
    void withoutAMoveNothingIsExpected() throws Exception {
        JsonNode kept = run("advise", DEMO, "--json").get("advice");
        assertThat(kept.get("kind").textValue()).isEqualTo("KEEP");
        assertThat(kept.get("moves")).isEmpty();
        JsonNode moved = move().get("advice");
        List<String> expected =
                keys(kept).stream().filter(key -> key.startsWith("expected")).toList();
        assertThat(expected).hasSize(6).allSatisfy(key -> {
            assertThat(kept.get(key).isNull()).as(key).isTrue();
            assertThat(moved.get(key).isNumber()).as(key).isTrue();
        });
        assertThat(moved.get("moves")).hasSize(1);
    }

    @Test
    void aTestHasTheNamesOfTheReadme() throws Exception {
        String section = Readme.between("In `assess --json` each entry", "From the second revision on");
        JsonNode test = run("assess", DEMO, "--json").at("/trays/tests/1");
        assertThat(Readme.code(section).stream().filter(code -> code.matches("[a-z]\\w+")))
                .hasSizeGreaterThan(8)
                .allSatisfy(key -> assertThat(test.findValue(key) != null || key.equals("evenness"))
                        .as(key)
                        .isTrue());
        assertThat(keys(test)).contains("evenness", "conditions", "proof");
        assertThat(keys(test.get("evenness"))).contains("cvPercent", "fieldCvPercent", "verdict");
        assertThat(Readme.constants(section)).containsExactlyInAnyOrderElementsOf(names(EvennessVerdict.values()));
    }

    @Test
    void whatWasCheckedAgainHasTheNamesOfTheReadme() throws Exception {
        String section = Readme.between("From the second revision on", "`setup new --json` answers");
        List<String> constants = new ArrayList<>(names(Rechecked.What.values()));
        constants.addAll(names(Rechecked.State.values()));
        assertThat(Readme.constants(section)).containsExactlyElementsOf(constants);
        ObjectNode setup = (ObjectNode) new ObjectMapper().readTree(Files.readString(Path.of(DEMO)));
        ((ObjectNode) setup.get("card")).put("revision", 2).put("previousDate", "2027-03-17");
        JsonNode since = new Commands(folder).assess(setup).get("rechecked");
        List<String> named = Readme.code(section);
        assertThat(named).containsAll(keys(since)).containsAll(keys(since.at("/parts/0")));
        assertThat(named.stream().filter(code -> code.matches("[a-z]\\w+") && !code.equals("rechecked")))
                .allSatisfy(key -> assertThat(since.findValue(key)).as(key).isNotNull());
    }

    @Test
    void aTestedProductHasItsTestedCv() throws Exception {
        JsonNode setup = new ObjectMapper().readTree(Files.readString(Path.of(DEMO)));
        int compared = 0;
        for (JsonNode ranked : run("match", DEMO, "--json").findValue("ranked")) {
            for (JsonNode tested : setup.at("/match/library")) {
                if (tested.get("id").equals(ranked.get("id")) && tested.hasNonNull("testedCv")) {
                    assertThat(tested.get("testedCv").textValue())
                            .startsWith(
                                    String.valueOf(ranked.get("testedCvPercent").doubleValue())
                                            .replace(".0", ""));
                    compared++;
                }
            }
        }
        assertThat(compared).isPositive();
    }

    /** What {@code assess} prints to be read has every finding that its JSON has. */
    @Test
    void thePageHasEveryFinding() throws Exception {
        String caked = Files.readString(Path.of("demo", "uneven.json"))
                .replace("FREE_FLOWING", "CAKED")
                .replace("\"signedBy\"", "\"signedNot\"");
        Files.writeString(folder.resolve("caked.json"), caked);
        Commands.Answer page = new Commands(folder).run("assess", "caked.json");
        assertThat(page.code()).isEqualTo(CommandFace.FOUND);
        String words = page.out().replaceAll("[\\s\u00a0]+", " ");
        JsonNode findings = run("assess", "caked.json", "--json").get("findings");
        assertThat(findings).hasSizeGreaterThan(4);
        findings.forEach(finding ->
                assertThat(words).contains(finding.get("message").textValue().replaceAll("[\\s\u00a0]+", " ")));
    }

    /** The keys of the first object in the text that follows. */
    private static List<String> stated(String command) throws Exception {
        String section = Readme.between("`setup new --json` answers", "What `verify` detects:");
        String rest = section.substring(section.indexOf(command));
        return Readme.keys(rest.substring(rest.indexOf('{'), rest.indexOf('}')));
    }

    @Test
    void theOtherAnswersHaveTheNamesOfTheReadmeAndNoOther() throws Exception {
        assertThat(keys(run("setup", "new", "--from", DEMO, "--out", "new.json", "--json")))
                .isEqualTo(stated("setup new --json"));
        Files.createDirectories(folder.resolve("farm").resolve("2027"));
        Files.writeString(folder.resolve("farm").resolve("2027").resolve("bad.json"), "{");
        assertThat(keys(run("farm", "farm", "list", "--json"))).isEqualTo(stated("list --json"));
        JsonNode check = run("farm", "farm", "check", "--json");
        List<String> ofCheck = new ArrayList<>(keys(check));
        ofCheck.addAll(keys(check.at("/problems/0")));
        assertThat(ofCheck).isEqualTo(stated("check --json"));
        List<String> ofRecord = stated("record --json");
        assertThat(ofRecord).containsSequence("file", "csv");
        assertThat(keys(run("farm", "farm", "record", "--season", "2027", "--json")))
                .isEqualTo(without(ofRecord, "file"));
        assertThat(keys(run("farm", "farm", "record", "--season", "2027", "--out", "r.csv", "--json")))
                .isEqualTo(without(ofRecord, "csv"));
        assertThat(new Commands(folder).run("card", DEMO, "--out", "card.pdf").code())
                .isZero();
        assertThat(keys(run("verify", "card.pdf", "--json"))).isEqualTo(stated("verify --json"));
    }

    private static List<String> without(List<String> keys, String one) {
        return keys.stream().filter(key -> !key.equals(one)).toList();
    }

    @Test
    void theProblemsOfAFileAreThoseOfTheProgram() throws Exception {
        String words = Readme.code(Readme.between("with `problem` one of", ", `farm … record"))
                .get(1);
        assertThat(words.split(" "))
                .containsExactlyInAnyOrderElementsOf(names(FarmProblem.What.values()).stream()
                        .map(name -> name.toLowerCase(Locale.ROOT))
                        .toList());
    }
}
