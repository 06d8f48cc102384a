package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.PropertyResourceBundle;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.evenfall.PublishedSources.Row;
import org.junit.jupiter.api.Test;

/** Every published source is in the table of the README once, is used, and is checked where the table says so. */
class PublishedSourcesTest {

    /** Standards by their number. */
    private static final Pattern STANDARD = Pattern.compile("\\b(?:RFC \\d+|ISO(?:/IEC)? \\d+(?:-\\d+)?|"
            + "ETSI EN [\\d -]*\\d|NIST SP [\\d-]*\\d|ANSI\\S* Y[\\d.]*\\d|WCAG \\d\\.\\d)");

    private static final Path BUNDLE = Path.of("src", "main", "resources", "org", "evenfall", "words.properties");

    private final PublishedSources table = PublishedSources.of(Files.readString(Path.of("README.md")));

    PublishedSourcesTest() throws IOException {}

    /** Name and text of each file of a kind below a folder, without these two classes. */
    private static Map<String, String> files(String root, String end) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(Path.of(root))) {
            for (Path path : all.filter(one -> one.toString().endsWith(end)).toList()) {
                if (!path.getFileName().toString().startsWith("PublishedSources")
                        && !path.toString().contains("fuzz")) {
                    files.put(path.toString(), Files.readString(path));
                }
            }
        }
        return files;
    }

    private static Map<String, String> tests() throws IOException {
        Map<String, String> files = files("src/test/java", ".java");
        files.putAll(files("src/dss/java", ".java"));
        files.putAll(files("src/test/resources", ".csv"));
        return files;
    }

    @Test
    void everyRowIsThereOnceAndIsCheckedWhereItSays() throws Exception {
        assertThat(table.wrongRows(tests())).isEmpty();
    }

    @Test
    void everySourceOfACommentIsInTheTable() throws Exception {
        Map<String, String> files = files("src/main/java", ".java");
        files.putAll(files("src/test/java", ".java"));
        List<String> wrong = new ArrayList<>();
        List<String> names = table.rows().stream().map(Row::name).toList();
        files.forEach((file, code) -> {
            wrong.addAll(table.wrongInComments(file, code));
            PublishedSources.comments(code).stream()
                    .flatMap(comment -> STANDARD.matcher(comment).results())
                    .filter(found -> !names.contains(found.group()))
                    .forEach(found -> wrong.add(file + ": no row of " + found.group()));
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void everySourceOnTheScreenIsInTheTable() throws Exception {
        try (Reader in = Files.newBufferedReader(BUNDLE)) {
            PropertyResourceBundle words = new PropertyResourceBundle(in);
            assertThat(words.keySet().stream()
                            .filter(key -> key.startsWith("source."))
                            .map(key -> key + "=" + words.getString(key))
                            .filter(line -> table.isWrong(line.split("=", 2)[1])))
                    .isEmpty();
        }
    }

    @Test
    void everySourceOfADataFileIsInTheTable() throws Exception {
        List<String> wrong = new ArrayList<>();
        int cells = 0;
        for (Map.Entry<String, String> file :
                files("src/test/resources", ".csv").entrySet()) {
            if (!file.getValue().lines().findFirst().orElse("").endsWith(",source")) {
                continue;
            }
            try (CSVParser rows = CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(new StringReader(file.getValue()))) {
                for (CSVRecord row : rows) {
                    cells++;
                    if (table.isWrongCell(row.get("source"))) {
                        wrong.add(file.getKey() + ": " + row.get("source"));
                    }
                }
            }
        }
        assertThat(cells).isGreaterThan(100);
        assertThat(wrong).isEmpty();
    }

    @Test
    void everySourceOfTheTableIsUsed() throws Exception {
        Map<String, String> files = files("src/main/java", ".java");
        files.put(BUNDLE.toString(), Files.readString(BUNDLE));
        files.putAll(tests());
        String all = files.values().stream().map(PublishedSources::oneLine).collect(Collectors.joining("\n"));
        assertThat(table.rows().stream().map(Row::name).filter(name -> !all.contains(name)))
                .isEmpty();
    }

    private static final PublishedSources TWO = PublishedSources.of("""
            # A

            ## Published sources

            | source | published as | known | used for | checked in |
            |---|---|---|---|---|
            | Miller 2001 | a book | from memory | b | `ATest` |
            | Smith et al. 1999 | a paper | read | a | shown, not checked |

            ## Licence
            """);

    @Test
    void faultsOfTheTableAreFound() {
        Row miller = TWO.rows().get(0);
        Map<String, String> good = Map.of("a/ATest.java", "/** Miller\n * 2001. */");
        assertThat(TWO.wrongRows(good)).isEmpty();
        assertThat(TWO.wrongRows(Map.of())).containsExactly("Miller 2001: there is no ATest");
        assertThat(TWO.wrongRows(Map.of("a/ATest.java", ""))).containsExactly("Miller 2001 is not named in ATest");
        assertThat(new PublishedSources(List.of(miller, miller)).wrongRows(good))
                .containsExactly("Miller 2001 is twice in the table");
        Row unclear = new Row("Adams 1990", "", "guessed", "", "somewhere");
        assertThat(new PublishedSources(List.of(miller, unclear)).wrongRows(good))
                .hasSize(3);
    }

    @Test
    void faultsOfCommentsAreFound() {
        assertThat(TWO.wrongInComments("A", "/** Source: Smith et\n * al. 1999. Assumption: Miller 2001. */"))
                .isEmpty();
        assertThat(TWO.wrongInComments("A", "// Source (from memory): Miller\n  // 2001\n"))
                .isEmpty();
        assertThat(TWO.wrongInComments("A", "f(\"// Source: x\"); /** Source: that of the bundle key. */"))
                .isEmpty();
        assertThat(TWO.wrongInComments("A", "/** Source: Miller 2001. Source (from memory): Smith et al. 1999. */"))
                .containsExactly("A: Miller 2001 is known from memory", "A: Smith et al. 1999 is known read");
        assertThat(TWO.wrongInComments("A", "/** Source: Smith 1999.\n *\n * <p>Smith et al. 1999 */"))
                .hasSize(1);
    }

    @Test
    void faultsOfSentencesAreFound() {
        assertThat(TWO.isWrong("assumption, ours: 3 cm")).isFalse();
        assertThat(TWO.isWrong("Smith et al. 1999, doi 10.1/j.2000.x: 3 cm")).isFalse();
        assertThat(TWO.isWrong("assumption, ours: 3 cm, after Jones")).isTrue();
        assertThat(TWO.isWrong("assumption, ours: 3 cm, see 2003")).isTrue();
        assertThat(TWO.isWrong("a handbook")).isTrue();
        assertThat(TWO.isWrong("Smith et al. 1999 and others 2004")).isTrue();
        assertThat(TWO.isWrongCell("computed apart")).isFalse();
        assertThat(TWO.isWrongCell("Jones: a book")).isTrue();
    }
}
