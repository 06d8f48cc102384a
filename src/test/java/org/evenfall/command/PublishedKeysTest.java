package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The published JSON: programs of others read it, so no key is renamed or moved. More keys may be added. The stored
 * lists and values are what version 0.1.0 answered before its inside was rebuilt, and the keys published since; they are
 * no outside check.
 */
class PublishedKeysTest {

    /** How near a stored value, relative. */
    private static final double SAME = 1e-4;

    @TempDir
    private Path folder;

    private JsonNode answer(String command, String setup) {
        String file = Path.of("demo", setup + ".json").toAbsolutePath().toString();
        return new Commands(folder).run(command, file, "--json").json();
    }

    private static Set<String> stored(String name) throws IOException {
        try (InputStream in = PublishedKeysTest.class.getResourceAsStream("published-" + name + ".txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Every key below a node, with its path; an item of an array is {@code []}. */
    private static Set<String> paths(JsonNode node) {
        Set<String> paths = new TreeSet<>();
        collect(node, "", paths);
        return paths;
    }

    private static void collect(JsonNode node, String path, Set<String> paths) {
        node.fields().forEachRemaining(field -> {
            String below = path.isEmpty() ? field.getKey() : path + "." + field.getKey();
            paths.add(below);
            collect(field.getValue(), below, paths);
        });
        if (node instanceof ArrayNode items) {
            for (JsonNode item : items) {
                paths.add(path + "[]");
                collect(item, path + "[]", paths);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "assess, setup",
        "assess, unfinished",
        "match, setup",
        "match, unfinished",
        "advise, setup",
        "advise, unfinished"
    })
    void everyPublishedKeyIsStillThere(String command, String setup) throws Exception {
        assertThat(paths(answer(command, setup))).containsAll(stored(command + "-" + setup));
    }

    /** Keys that version 0.1.0 did not have: crop loss, comparisons, and how the machine was set in each test. */
    @Test
    void theTrayTestsAreComplete() {
        JsonNode trays = answer("assess", "setup").at("/trays");
        JsonNode evenness = trays.at("/tests/1/evenness");
        JsonNode comparison = trays.at("/comparisons/0");
        assertThat(comparison.at("/first").intValue()).isZero();
        assertThat(comparison.at("/second").intValue()).isEqualTo(1);
        assertThat(comparison.at("/sameSettings").booleanValue()).isFalse();
        assertThat(comparison.at("/change/cvChangePercent").doubleValue())
                .isCloseTo(
                        evenness.at("/cvPercent").doubleValue()
                                - trays.at("/tests/0/evenness/cvPercent").doubleValue(),
                        within(1e-9));
        assertThat(comparison.at("/change/chanceSecondMoreEven").doubleValue()).isBetween(0.9, 1.0);
        assertThat(trays.at("/loss/lowKgPerHa").doubleValue())
                .isPositive()
                .isLessThan(trays.at("/loss/highKgPerHa").doubleValue());
        assertThat(trays.at("/tests/0/settings/levers/long vane").doubleValue()).isEqualTo(9);
        assertThat(trays.at("/tests/1/settings/ptoRpm").doubleValue()).isEqualTo(540);
        assertThat(trays.at("/tests/1/openingLeft").doubleValue()).isEqualTo(27.5);
        assertThat(trays.at("/tests/1/windMPerS").doubleValue()).isEqualTo(1.2);
        JsonNode none = answer("assess", "unfinished").at("/trays");
        assertThat(none.get("loss").isNull()).isTrue();
        assertThat(none.get("comparisons")).isEmpty();
    }

    /** The log of passes: every key; the figures by hand: 2 175 kg on 12.5 ha are 174 kg/ha, of it 46 % nitrogen. */
    @Test
    void theLogIsComplete() throws Exception {
        ObjectNode setup = (ObjectNode)
                new ObjectMapper().readTree(Path.of("demo", "setup.json").toFile());
        ((ObjectNode) setup.at("/rate/plan"))
                .putArray("nitrogenSplits")
                .add("80 kg/ha")
                .add("70 kg/ha");
        ArrayNode passes = setup.putObject("log").putArray("passes");
        passes.addObject()
                .put("date", "18.3.2027")
                .put("field", "Far Bank")
                .put("area", "12.5 ha")
                .put("productDrawn", "2175 kg");
        passes.addObject().put("area", "3 ha");
        Path file = folder.resolve("logged.json");
        Files.writeString(file, setup.toString());
        JsonNode log = new Commands(folder)
                .run("assess", file.toString(), "--json")
                .json()
                .at("/log");
        assertThat(paths(log))
                .containsExactlyInAnyOrder(
                        "passes",
                        "passes[]",
                        "passes[].index",
                        "passes[].date",
                        "passes[].field",
                        "passes[].areaHa",
                        "passes[].productKg",
                        "passes[].amounts",
                        "passes[].amounts.areaHa",
                        "passes[].amounts.productKg",
                        "passes[].amounts.productKgPerHa",
                        "passes[].amounts.nitrogenKgPerHa",
                        "passes[].amounts.nitrogenKg",
                        "passes[].amounts.deviationPercent",
                        "fields",
                        "fields[]",
                        "fields[].field",
                        "fields[].amounts",
                        "fields[].amounts.passes",
                        "fields[].amounts.areaHa",
                        "fields[].amounts.productKg",
                        "fields[].amounts.nitrogenKg",
                        "fields[].amounts.nitrogenKgPerHa",
                        "fields[].plan",
                        "fields[].plan.passes",
                        "fields[].plan.nitrogenKgPerHa",
                        "fields[].plan.leftKgPerHa",
                        "total",
                        "total.passes",
                        "total.spreadHa",
                        "total.productKg",
                        "total.nitrogenKg",
                        "incomplete");
        assertThat(log.at("/passes/0/date").textValue()).isEqualTo("2027-03-18");
        assertThat(log.at("/passes/0/amounts/productKgPerHa").doubleValue()).isCloseTo(174, within(1e-9));
        assertThat(log.at("/fields/0/amounts/nitrogenKgPerHa").doubleValue()).isCloseTo(80.04, within(1e-9));
        assertThat(log.at("/passes/1/amounts").isNull()).isTrue();
        assertThat(log.at("/incomplete").intValue()).isEqualTo(1);
        assertThat(answer("assess", "unfinished").at("/log/passes")).isEmpty();
    }

    /** What a tray test was driven under, what of that still proves the settings, and what the card says of it. */
    @Test
    void theConditionsOfATestAreComplete() {
        JsonNode json = answer("assess", "setup");
        JsonNode conditions = json.at("/trays/tests/1/conditions");
        assertThat(conditions.at("/tramlineWidthM").doubleValue()).isEqualTo(28);
        assertThat(conditions.at("/drivingPattern").textValue()).isEqualTo("BACK_AND_FORTH");
        assertThat(conditions.at("/heightOverRimM").doubleValue()).isEqualTo(0.75);
        assertThat(conditions.at("/speedKmPerH").doubleValue()).isEqualTo(12);
        assertThat(conditions.at("/productKgPerHa").doubleValue()).isEqualTo(173.9);
        assertThat(conditions.at("/product").textValue()).isEqualTo("Granular urea, treated");
        assertThat(conditions.at("/delivery").textValue()).isEqualTo("S-1042");
        assertThat(conditions.at("/bulkDensityKgPerL").doubleValue()).isEqualTo(0.7572);
        assertThat(conditions.at("/medianMm").doubleValue()).isEqualTo(3.101);
        assertThat(json.at("/trays/tests/0/proof/differences/0").textValue()).isEqualTo("LEVERS");
        assertThat(json.at("/trays/tests/1/proof/differences")).isEmpty();
        assertThat(json.at("/trays/tests/1/proof/comparable").booleanValue()).isTrue();
        assertThat(json.at("/trays/tests/1/proof/assumed")).isEmpty();
        assertThat(json.at("/card/unevenPercent").isNull()).isTrue();
        assertThat(json.at("/card/testedDelivery").textValue()).isEmpty();
        assertThat(json.at("/rate/bucketIndexes")).hasSize(3);
    }

    /** Keys of the rate since: how it is set, each outlet, the errors. */
    @Test
    void theKeysAddedToTheRate() {
        assertThat(paths(answer("assess", "setup")))
                .contains(
                        "machine.rateSetting",
                        "machine.factorRule",
                        "rate.againstOther.massShare",
                        "rate.againstOther.volumeShare",
                        "rate.againstOther.otherDensityKgPerL",
                        "rate.againstOther.densityAssumed",
                        "rate.nitrogenSplits.passesKgPerHa[]",
                        "rate.nitrogenSplits.totalKgPerHa",
                        "rate.nitrogenSplits.thisPassNumbers[]",
                        "rate.speed.standardErrorKmPerH",
                        "rate.bucketTests[].leftDeviationPercent",
                        "rate.bucketTests[].rightDeviationPercent",
                        "rate.bucketTests[].bulkDensityKgPerL");
    }

    /** Keys of the product since: where the sizes were read, and the granule density before its limit. */
    @Test
    void theKeysAddedToTheProduct() {
        JsonNode product = answer("assess", "setup").at("/product");
        for (String figure : List.of(
                "d16Mm",
                "d50Mm",
                "d84Mm",
                "spreadIndexPercent",
                "uniformityIndex",
                "shareUnder2MmPercent",
                "share2To4MmPercent")) {
            assertThat(product.at("/sieve/readFrom/" + figure).textValue())
                    .as(figure)
                    .isEqualTo("CURVE");
        }
        assertThat(product.at("/particle/kgPerM3").doubleValue()).isCloseTo(757.1667 / 0.59, within(0.01));
        assertThat(product.at("/particle/uncappedKgPerM3").doubleValue())
                .isEqualTo(product.at("/particle/kgPerM3").doubleValue());
        assertThat(product.at("/particle/denserThanSolid").booleanValue()).isFalse();
    }

    /** Neither demo is advised a move: the first, uneven test of one alone is. */
    @Test
    void theKeysOfAMoveAreStillThere() throws Exception {
        ObjectNode setup = (ObjectNode) new ObjectMapper().readTree(Files.readString(Path.of("demo", "setup.json")));
        ((ArrayNode) setup.at("/trays/tests")).remove(1);
        Path file = Files.writeString(folder.resolve("first.json"), setup.toString());
        JsonNode advice =
                new Commands(folder).run("advise", file.toString(), "--json").json();
        assertThat(advice.at("/advice/kind").textValue()).isEqualTo("MOVE_LEVER");
        assertThat(paths(advice)).containsAll(stored("move"));
    }

    private JsonNode advised(String pointer, String name, String value) throws Exception {
        ObjectNode setup = (ObjectNode) new ObjectMapper().readTree(Files.readString(Path.of("demo", "setup.json")));
        ((ArrayNode) setup.at("/trays/tests")).remove(1);
        if (setup.at(pointer) instanceof ArrayNode items) {
            items.set(Integer.parseInt(name), value);
        } else {
            ((ObjectNode) setup.at(pointer)).put(name, value);
        }
        Path file = Files.writeString(folder.resolve("changed.json"), setup.toString());
        return new Commands(folder).run("advise", file.toString(), "--json").json();
    }

    /** Keys of the advice since: what kind of move or repeat it is, and what could not be read. */
    @Test
    void theKeysAddedToTheAdvice() throws Exception {
        assertThat(paths(answer("advise", "setup")))
                .contains(
                        "advice.probe",
                        "advice.back",
                        "advice.moreRuns",
                        "advice.leaveBlank",
                        "advice.lever",
                        "unreadable");
        JsonNode plain = answer("advise", "setup");
        assertThat(plain.at("/advice/probe").booleanValue()).isFalse();
        assertThat(plain.at("/advice/back").booleanValue()).isFalse();
        assertThat(plain.at("/advice/moreRuns").isNull()).isTrue();
        assertThat(plain.at("/advice/lever").textValue()).isEmpty();
        assertThat(plain.at("/unreadable")).isEmpty();
    }

    @Test
    void aTrayTypedAsZeroIsToBeTypedAgain() throws Exception {
        JsonNode advice = advised("/trays/tests/0/catches", "3", "0 g").at("/advice");
        assertThat(advice.at("/kind").textValue()).isEqualTo("REPEAT_TEST");
        assertThat(advice.at("/leaveBlank")).hasSize(1);
        assertThat(advice.at("/leaveBlank/0").intValue()).isEqualTo(4);
        assertThat(advice.at("/reasons/0/message").textValue()).startsWith("Tray 4 reads 0.0 g; the others allow ");
    }

    @Test
    void anEntryThatCannotBeReadIsNamed() throws Exception {
        JsonNode answer = advised("/trays/tests/0/catches", "2", "l8.9 g");
        assertThat(answer.at("/unreadable/0/key").textValue()).isEqualTo("entry.notANumber");
        assertThat(answer.at("/unreadable/0/field").textValue()).isEqualTo("/trays/tests/0/catches/2");
        assertThat(answer.at("/unreadable")).hasSize(1);
        // the numbers of the trays are those on the ground, the unread one counted
        assertThat(answer.at("/advice/kind").textValue()).isEqualTo("MOVE_LEVER");
    }

    @Test
    void aSlowShaftComesBeforeALever() throws Exception {
        JsonNode advice = advised("/yard", "ptoMeasured", "480 rpm").at("/advice");
        assertThat(advice.at("/kind").textValue()).isEqualTo("PTO_SPEED");
        assertThat(advice.at("/reasons/0/field").textValue()).isEqualTo("/yard/ptoMeasured");
        assertThat(advice.at("/reasons/0/message").textValue())
                .isEqualTo("The PTO speed is 480 rpm; 540 rpm is wanted. Up to 3 % off is good.");
    }

    @Test
    void theKeysOfVerifyAreStillThere() throws Exception {
        String demo = Path.of("demo", "setup.json").toAbsolutePath().toString();
        assertThat(new Commands(folder).run("card", demo, "--out", "card.pdf").code())
                .isZero();
        assertThat(paths(
                        new Commands(folder).run("verify", "card.pdf", "--json").json()))
                .containsAll(stored("verify"));
    }

    @Test
    void thePublishedValuesAreTheSame() throws Exception {
        Map<String, JsonNode> answers = new HashMap<>();
        SoftAssertions all = new SoftAssertions();
        for (String line : table()) {
            String[] cells = line.split(",", -1);
            JsonNode found = answers.computeIfAbsent(cells[0] + " " + cells[1], call -> answer(cells[0], cells[1]))
                    .at(cells[2]);
            if (found.isNumber()) {
                double expected = Double.parseDouble(cells[3]);
                all.assertThat(found.doubleValue())
                        .as(line)
                        .isCloseTo(expected, within(SAME * Math.abs(expected) + 1e-12));
            } else {
                all.assertThat(found.asText()).as(line).isEqualTo(cells[3]);
            }
        }
        all.assertAll();
        assertThat(answers).hasSize(6);
    }

    private static List<String> table() throws IOException {
        try (InputStream in = PublishedKeysTest.class.getResourceAsStream("published-values.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList();
        }
    }
}
