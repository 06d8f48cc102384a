package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.publish.Reports.WORDS;

import java.util.List;
import java.util.stream.Stream;
import org.evenfall.finding.Step;
import org.evenfall.report.ReportContent;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Chart;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Notice;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Table;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.report.ReportContent.Tray;
import org.evenfall.result.AdviceLines;
import org.evenfall.result.AnswerGroups;
import org.evenfall.result.ResultLine;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportContentsTest {

    private static <T> List<T> blocks(ReportContent content, Class<T> type) {
        return content.blocks().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    /** Every sentence and value, as plain text. */
    private static List<String> texts(ReportContent content) {
        return content.blocks().stream()
                .flatMap(ReportContentsTest::text)
                .map(text -> text.replace('\u00a0', ' '))
                .toList();
    }

    private static Stream<String> text(Block block) {
        if (block instanceof Pair pair) {
            return Stream.of(pair.label() + ": " + pair.value());
        }
        if (block instanceof Item item) {
            return Stream.of(item.text());
        }
        if (block instanceof Text text) {
            return Stream.of(text.text());
        }
        if (block instanceof Notice notice) {
            return notice.lines().stream();
        }
        if (block instanceof Table table) {
            return table.rows().stream().flatMap(List::stream);
        }
        return block instanceof Heading heading ? Stream.of(heading.text()) : Stream.of();
    }

    private static List<String> report(String name) throws Exception {
        return texts(Reports.content(Reports.setup(name)));
    }

    @Test
    void theHeadNamesTheJob() throws Exception {
        assertThat(report("setup"))
                .contains(
                        "Farm: Thornmarsh Farm",
                        "Field or block: Long Reach",
                        "Crop: winter wheat",
                        "The machine: The farm’s broadcaster",
                        "Name on the bag: Granular urea, treated",
                        "Delivery or batch number: S-1042",
                        "Tramline width: 28 m",
                        "Date: 2027-03-18, revision 1",
                        "A card can be made.",
                        "The machine’s handbook, local codes and licensed practice come first.");
        assertThat(Reports.content(Reports.setup("setup")).foot().replace('\u00a0', ' '))
                .endsWith("revision 1 · printed 18 March 2027, 09:00");
    }

    @Test
    void onlyAnInventedSetupIsCalledInvented() throws Exception {
        assertThat(report("setup")).anyMatch(line -> line.startsWith("Everything in this report is invented."));
        assertThat(report("empty")).noneMatch(line -> line.contains("invented"));
    }

    /** Nothing that is typed is left out, in a table or as a label with its value. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven", "unfinished", "many"})
    void everyAnswerIsPrinted(String name) throws Exception {
        Setup setup = Reports.setup(name);
        List<String> texts = texts(Reports.content(setup));
        for (AnswerGroups.Group group : AnswerGroups.of(WORDS, setup)) {
            for (ResultLine line : group.lines()) {
                String value = line.value().replace('\u00a0', ' ');
                assertThat(texts)
                        .as(group.step() + " " + line)
                        .anyMatch(text -> text.equals(value)
                                || text.endsWith(": " + value)
                                || text.contains(": " + value + " · "));
            }
        }
    }

    @Test
    void resultsHaveTheirIntervalsAndTheLevelIsNamed() throws Exception {
        assertThat(report("setup"))
                .anyMatch(line -> line.contains("its 90 % interval"))
                .anyMatch(line -> line.startsWith("Median 3.1 mm (between 3.0 and 3.3 mm)"))
                .contains("Field CV about 18 % (14 to 22 %): not even enough", "Field CV about 4 % (2 to 8 %): even")
                .anyMatch(line ->
                        line.startsWith("In the model it flies about 3 m less far") && line.contains("(0 to 8 m)"));
    }

    @Test
    void aBucketTestIsOneLine() throws Exception {
        assertThat(report("setup").stream().filter(line -> line.matches("Test \\d: .* kg/min from all outlets.*")))
                .hasSize(3);
    }

    /** A tray test has its bars at the true places, and the advice that follows from it and the tests before it. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven", "one"})
    void everyTestHasItsPictureAndItsAdvice(String name) throws Exception {
        Setup setup = Reports.setup(name);
        ReportContent content = Reports.content(setup);
        List<TrayTestResult> tests = Assessor.assess(setup).trays().tests();
        List<Chart> charts = blocks(content, Chart.class);
        assertThat(charts).hasSameSizeAs(tests);
        for (int i = 0; i < tests.size(); i++) {
            assertThat(charts.get(i).trays())
                    .extracting(Tray::placeM)
                    .isEqualTo(tests.get(i).evenness().positionsM());
            assertThat(charts.get(i).trays())
                    .extracting(Tray::percent)
                    .isEqualTo(tests.get(i).evenness().relativePercent());
            assertThat(charts.get(i).bands()).containsExactly(10.0, 15.0);
            Setup then = setup.withTrays(
                    setup.trays().withTests(setup.trays().tests().subList(0, i + 1)));
            assertThat(texts(content))
                    .contains(AdviceLines.headline(
                                    WORDS, Assessor.assess(then).trays().advice())
                            .replace('\u00a0', ' '));
        }
        assertThat(texts(content).stream().filter(line -> line.startsWith("Date: ") && line.contains("Wind speed: ")))
                .hasSameSizeAs(tests);
    }

    @Test
    void anEmptySetupSaysWhatIsNotDone() throws Exception {
        List<String> texts = report("empty");
        for (Step step : Step.values()) {
            assertThat(texts).contains(step.number() + "  " + WORDS.choice(step) + ": open");
        }
        assertThat(texts)
                .contains("Nothing entered yet.", "Missing: Rate: Do a bucket test.")
                .anyMatch(line -> line.startsWith("No card yet: "));
    }

    @Test
    void whatCannotBeReadIsNamed() throws Exception {
        ReportContent content = Reports.content(Reports.setup("wrong"));
        assertThat(texts(content))
                .contains("Not evaluated: something that it needs is missing, or cannot be read.")
                .anyMatch(line -> line.contains("Tramline width: wide"));
    }

    @Test
    void skippedPromptsAreListedWithWhatItMeans() throws Exception {
        Setup demo = Reports.setup("setup");
        Setup skipped = demo.withGuide(demo.guide().withSkipped("1g", true));
        assertThat(texts(Reports.content(skipped)))
                .anyMatch(line -> line.startsWith("1g  Sieves: Without sieves the median size on the bag counts."));
    }

    /** Each source once, at the end; what rests on it names its number. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven"})
    void sourcesComeOnceAtTheEnd(String name) throws Exception {
        List<Block> blocks = Reports.content(Reports.setup(name)).blocks();
        int end = blocks.indexOf(new Heading(Level.SECTION, WORDS.text("result.sources")));
        List<Pair> sources = blocks.subList(end + 1, blocks.size()).stream()
                .map(Pair.class::cast)
                .toList();
        assertThat(sources).extracting(Pair::value).doesNotHaveDuplicates().hasSizeGreaterThan(20);
        for (int i = 0; i < sources.size(); i++) {
            assertThat(sources.get(i).label()).startsWith("[" + (i + 1) + "]");
        }
        assertThat(report(name)).anyMatch(line -> line.matches("In the model it flies about .*\\[\\d+]"));
    }
}
