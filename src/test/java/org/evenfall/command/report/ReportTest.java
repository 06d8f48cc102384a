package org.evenfall.command.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenfall.command.Commands;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What assess prints: a page in the words of the wizard, for every state of a setup. */
class ReportTest {

    /** The report of the demo. A wanted change is written with -Dgolden=write; then read it. */
    private static final Path KEPT =
            Path.of("src", "test", "resources", "org", "evenfall", "command", "report", "demo.txt");

    /** Letters of a line that a page holds. */
    private static final int WIDEST = 100;

    /** One and a half to two and a half pages: a fifth of it is where the figures come from. */
    private static final int MOST_LINES = 215;

    private static final String EMPTY = "{\"evenfall\": 1}";

    @TempDir
    private Path folder;

    private static String text(String name) throws Exception {
        return name.isEmpty() ? EMPTY : Files.readString(Path.of("demo", name + ".json"));
    }

    private static Setup setup(String name) throws Exception {
        return new SetupJson().read(text(name), "test");
    }

    private static String report(Setup setup, Locale locale) {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), locale);
        return Report.of(setup, Assessor.assess(setup), words).replace(System.lineSeparator(), "\n");
    }

    private static String report(String name) throws Exception {
        return report(setup(name), Locale.UK);
    }

    @Test
    void theReportOfTheDemoIsAsItWas() throws Exception {
        String now = report("setup");
        if ("write".equals(System.getProperty("golden"))) {
            Files.createDirectories(KEPT.getParent());
            Files.writeString(KEPT, now);
        }
        assertThat(now).isEqualTo(Files.readString(KEPT));
        assertThat(now.lines().count()).isLessThanOrEqualTo(MOST_LINES);
    }

    @Test
    void assessPrintsIt() throws Exception {
        Commands commands = new Commands(folder);
        String demo = Path.of("demo", "setup.json").toAbsolutePath().toString();
        String printed = commands.run("assess", demo).out().replace(System.lineSeparator(), "\n");
        assertThat(printed).isEqualTo(report("setup"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"setup", "unfinished", "uneven", ""})
    void itHoldsWordsOnlyAndNoLineIsTooLong(String name) throws Exception {
        String report = report(name);
        assertThat(report.lines()).allMatch(line -> line.length() <= WIDEST);
        assertThat(report).doesNotContain("null", "NaN", "\u00a0", "{", "}", "@", "\n\n\n");
        assertThat(words(withoutSources(report)))
                .as("no key")
                .noneMatch(word -> word.matches("[a-z]+(\\.\\w+)+"))
                .as("no constant")
                .noneMatch(word -> word.matches("[A-Z]+_[A-Z_]+|[A-Z]{4,}"));
        assertThat(report.lines()).as("trailing blanks").noneMatch(line -> line.endsWith(" "));
        assertThat(report.lines().filter(line -> line.matches("\\d  .+: .+"))).hasSize(8);
    }

    /** The report without the texts of sources, which have years and names of their own. */
    private static String withoutSources(String report) {
        ResourceBundle bundle = ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH);
        // a longer one first, which may begin like a shorter one
        List<String> texts = bundle.keySet().stream()
                .filter(key -> key.startsWith("source."))
                .map(bundle::getString)
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        String rest = report;
        for (String text : texts) {
            // a line may end at a blank, a full stop or a hyphen
            String anyLines = Arrays.stream(text.split("(?<=[.-])|(?= )"))
                    .map(part -> Pattern.quote(part.strip()))
                    .collect(Collectors.joining("\\s*"));
            rest = rest.replaceAll(anyLines, "");
        }
        return rest;
    }

    private static List<String> words(String report) {
        return Arrays.stream(report.split("[\\s,;:()“”]+"))
                .map(word -> word.replaceAll("\\.$", ""))
                .toList();
    }

    /** Numbers without a unit: places in a list, counts, scales without unit, indices, money, dates. */
    private static final List<String> WITHOUT_UNIT = List.of(
            "(?m)^\\d  ",
            "(?m)^   [1-3] ",
            "\\d{4}-\\d\\d-\\d\\d",
            "S-\\d+",
            "(?m)^   Season +\\d+",
            "size guide number \\d+",
            "uniformity index d5/d90 \\d+",
            "(long vane|short vane|drop point)(, °)? [\\d.,]+",
            "Units per acre \\(1\\.12 lb\\) +\\d+",
            "Bags +[\\d.]+, order \\d+",
            "Hopper loads +[\\d.]+",
            "All 3 passes",
            "pass is no. 2",
            "Simulated \\d+ times",
            "[Tt]est \\d",
            "Runs to drive \\d",
            "Granules in it \\d+",
            "(nitrogen costs|product before|on the area) [\\d.]+",
            "Opening (left|right) [\\d.]+",
            "position \\d",
            "\\d+ trays are up to",
            "\\d+ trays, closer",
            "\\d+ of your trays",
            "\\d+ runs make",
            "\\d+ more below",
            "above 15 °C",
            "\\+\\d+ points");

    @ParameterizedTest
    @ValueSource(strings = {"setup", "unfinished"})
    void everyOtherFigureHasItsUnit(String name) throws Exception {
        String report = withoutSources(report(name));
        String rest = report;
        for (String allowed : WITHOUT_UNIT) {
            rest = rest.replaceAll(allowed.replace(" ", "\\s+"), "\n   ");
        }
        String units = Arrays.stream(Unit.values())
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        String range = "(\\s+to\\s+|\\s+and\\s+|,\\s+then\\s+)";
        String figure = "(?<![\\w.,/])[\u2212+]?\\d+([.,]\\d+)?";
        String left = rest.replaceAll(figure + "(" + range + "\\d+([.,]\\d+)?)?\\s*(" + units + ")(?![A-Za-z])", "");
        assertThat(Pattern.compile(figure + ".{0,20}").matcher(left).results().map(one -> one.group()))
                .isEmpty();
        assertThat(left.length()).isLessThan(report.length() - 100);
    }

    @Test
    void anEmptySetupHasOneLineAStep() throws Exception {
        String report = report("");
        assertThat(report).startsWith("No card yet: Type the distance between tramlines. (");
        assertThat(report.lines().filter(line -> line.equals("   Nothing entered yet.")))
                .hasSize(8);
        assertThat(report.lines().filter(line -> line.startsWith("   Missing"))).hasSizeGreaterThan(15);
        assertThat(report.lines()).noneMatch(line -> line.startsWith("   ") && line.endsWith(":"));
    }

    @Test
    void whatStopsComesFirst() throws Exception {
        String caked = text("uneven").replace("FREE_FLOWING", "CAKED").replace("\"signedBy\"", "\"signedNot\"");
        List<String> lines =
                report(new SetupJson().read(caked, "test"), Locale.UK).lines().toList();
        assertThat(lines.stream()
                        .filter(line -> line.matches("   (Stop|Missing|Warning|Note)  .*"))
                        .map(line -> line.strip().split(" ")[0])
                        .distinct())
                .containsExactly("Stop", "Missing", "Warning", "Note");
        assertThat(lines).anyMatch(line -> line.startsWith("No card yet: The product is caked."));
    }

    @Test
    void aStopIsNamedWithItsStep() throws Exception {
        Setup caked = new SetupJson().read(text("setup").replace("FREE_FLOWING", "CAKED"), "test");
        assertThat(report(caked, Locale.UK))
                .contains("\n   Stop  Product: The product is caked.")
                .contains("1  Product: stopped\n")
                .doesNotContain("On the card:", "more below");
    }

    @Test
    void aGermanLocaleHasADecimalComma() throws Exception {
        String german = report(setup("setup"), Locale.GERMANY);
        assertThat(german)
                .contains("Density 0,76 kg/L", "Median 3,1 mm (between 3,0 and 3,3 mm)", "10,8 t", "48,7 kg/min")
                .contains("\u22129,3 m", "+0,2 m", "1,22");
        // what was typed with a point stays as typed, and so do the words of the bundle
        String computed = withoutSources(german).replace("(1.12 lb)", "").replace("10.5 · drop point", "");
        assertThat(Pattern.compile("\\d\\.\\d").matcher(computed).find()).isFalse();
    }

    @Test
    void theFiguresAreThoseOfTheJson() throws Exception {
        JsonNode json = new Commands(folder).assess(new ObjectMapper().readTree(text("setup")));
        String report = report("setup");
        assertThat(figure(report, "Product  ")).isEqualTo(rounded(json, "/rate/plan/productKgPerHa", 0, "kg/ha"));
        assertThat(figure(report, "In all")).isEqualTo(rounded(json, "/rate/plan/productTonnes", 1, "t"));
        assertThat(figure(report, "One outlet  "))
                .isEqualTo(rounded(json, "/rate/plan/flowPerOutletKgPerMin", 1, "kg/min"));
        assertThat(figure(report, "Counting and reading noise"))
                .isEqualTo(rounded(json, "/trays/tests/1/evenness/noisePercent", 0, "%"));
        double ground = 100 * json.at("/height/overGroundM").doubleValue();
        assertThat(figure(report, "Reference point over the ground"))
                .isEqualTo(String.format(Locale.ROOT, "%.0f cm", ground));
        for (int test = 0; test < 2; test++) {
            JsonNode evenness = json.at("/trays/tests/" + test + "/evenness");
            String row = line(report, "Test " + (test + 1) + "     ");
            StringBuilder expected = new StringBuilder();
            evenness.get("relativePercent")
                    .forEach(percent ->
                            expected.append(Math.round(percent.doubleValue())).append(" % "));
            assertThat(row.substring(row.indexOf("     "))
                            .replaceAll("\\s+", " ")
                            .strip())
                    .isEqualTo(expected.toString().strip());
            assertThat(line(report, "Test " + (test + 1) + "  2027"))
                    .contains("Field CV "
                            + Math.round(evenness.get("fieldCvPercent").doubleValue()) + " %");
        }
        JsonNode closest = json.at("/match/ranked/0");
        assertThat(line(report, "1  " + closest.get("name").textValue().substring(0, 8)))
                .contains(closest.get("name").textValue());
        // its chance depends on how often the measurements are repeated in simulation
        assertThat(report.lines().filter(line -> line.strip().matches("1 +\\d+\\s% +28\\sm .*")))
                .singleElement()
                .asString()
                .contains(rounded(json, "/match/ranked/0/throwDifferenceM", 1, "m"));
    }

    private static String rounded(JsonNode json, String pointer, int decimals, String unit) {
        assertThat(json.at(pointer).isNumber()).as(pointer).isTrue();
        return String.format(
                Locale.ROOT, "%." + decimals + "f %s", json.at(pointer).doubleValue(), unit);
    }

    private static String line(String report, String start) {
        return report.lines()
                .map(String::strip)
                .filter(line -> line.startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError(start));
    }

    private static String figure(String report, String label) {
        return line(report, label).substring(label.length()).strip();
    }

    /** Thirty-three trays fill several tables, each tray once, and long names break into lines. */
    @Test
    void manyTraysAndLongNamesFit() throws Exception {
        Setup demo = setup("setup");
        String name = "Granular urea from the long shed with a name that goes on ".repeat(4) + "X".repeat(150);
        TrayTestEntry test = demo.trays().tests().get(0);
        List<EnteredQuantity> catches =
                IntStream.range(0, 33).mapToObj(i -> test.catches().get(i % 7)).toList();
        Setup many = demo.withProduct(demo.product().withName(name))
                .withTrays(demo.trays()
                        .withTrayCount(new EnteredQuantity("33", Unit.NONE))
                        .withTests(List.of(test.withCatches(catches).withPositions(List.of()))));
        String report = report(many, Locale.UK);
        assertThat(report.lines()).allMatch(line -> line.length() <= WIDEST);
        assertThat(report.lines().filter(line -> line.startsWith("   Position")))
                .hasSize(4);
        assertThat(report.lines()
                        .filter(line -> line.startsWith("   Position"))
                        .flatMap(line -> Pattern.compile("-?\\d+(\\.\\d)? m")
                                .matcher(line)
                                .results()))
                .hasSize(33);
    }
}
