package org.evenfall;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The licences of all shipped libraries are in packaging/licences. What is shipped is the list that Maven writes before
 * the tests, by the plugin and the scope that also fill target/lib.
 */
class LicencesTest {

    private static final Path FOLDER = Path.of("packaging/licences");
    private static final String TABLE = "LIBRARIES.csv";
    private static final Path SHIPPED = Path.of("target/shipped-libraries.txt");

    /** {@code group:artifact:jar:[classifier:]version:scope:file}, perhaps with the name of its module. */
    private static final Pattern LIBRARY = Pattern.compile(
            "\\s+([^:\\s]+:[^:]+):jar:(?:[^:]+:)?[^:]+:(?:compile|runtime):(.*?\\.jar)(?:\\s+-- module .*)?");

    private static final Pattern LEGAL =
            Pattern.compile("(?i)(?:.*/)?[^/.]*(?:licen[cs]e|notice|copying)[^/.]*(?:\\.txt|\\.md)?");

    /** The jars of each shipped library; one that comes in parts for a system has several. */
    private static Map<String, List<Path>> shipped() throws IOException {
        assertThat(SHIPPED)
                .as("written by: mvn dependency:list@shipped-libraries")
                .exists();
        Map<String, List<Path>> jars = new TreeMap<>();
        for (String line : Files.readAllLines(SHIPPED)) {
            Matcher library = LIBRARY.matcher(line);
            if (library.matches()) {
                jars.computeIfAbsent(library.group(1), name -> new ArrayList<>())
                        .add(Path.of(library.group(2)));
            } else {
                assertThat(line).as("a line that is not understood").doesNotContain(":jar:");
            }
        }
        return jars;
    }

    private static List<CSVRecord> lines() throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(FOLDER.resolve(TABLE), UTF_8, format)) {
            return parser.getRecords();
        }
    }

    private static List<String> filesOf(CSVRecord line) {
        return List.of(line.get("files").split(" "));
    }

    private static String read(Path file) throws IOException {
        return plain(Files.readString(file));
    }

    /** Breaks of lines and the secure form of an address change no licence. */
    private static String plain(String text) {
        return text.replace("http://", "https://").replaceAll("\\s+", " ").strip();
    }

    @Test
    void eachShippedLibraryHasOneLineAndNoOtherHas() throws Exception {
        assertThat(lines())
                .extracting(line -> line.get("library"))
                .containsExactlyElementsOf(shipped().keySet());
        assertThat(lines()).allSatisfy(line -> assertThat(line.get("licence")).isNotBlank());
    }

    @Test
    void everyFileOfALineIsThereAndEveryFileThereIsOfALine() throws Exception {
        Set<String> named =
                lines().stream().flatMap(line -> filesOf(line).stream()).collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> !name.equals(TABLE)))
                    .containsExactlyInAnyOrderElementsOf(named);
        }
    }

    @Test
    void eachTextIsThereOnce() throws Exception {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> texts = new ArrayList<>();
            for (Path file : files.toList()) {
                texts.add(read(file));
            }
            assertThat(texts).doesNotHaveDuplicates().doesNotContain("");
        }
    }

    /** What a library says of its licence in its own jar changes with its version. */
    @Test
    void whatALibraryCarriesIsAmongTheFilesOfItsLine() throws Exception {
        Map<String, List<Path>> shipped = shipped();
        int carried = 0;
        for (CSVRecord line : lines()) {
            List<String> texts = new ArrayList<>();
            for (String file : filesOf(line)) {
                texts.add(read(FOLDER.resolve(file)));
            }
            for (Path jar : shipped.getOrDefault(line.get("library"), List.of())) {
                for (String text : legalTexts(jar)) {
                    carried++;
                    assertThat(texts).as("a text in %s", jar).contains(text);
                }
            }
        }
        assertThat(carried).as("texts found in jars").isGreaterThan(40);
    }

    private static List<String> legalTexts(Path jar) throws IOException {
        List<String> texts = new ArrayList<>();
        try (JarFile opened = new JarFile(jar.toFile())) {
            for (Enumeration<JarEntry> entries = opened.entries(); entries.hasMoreElements(); ) {
                JarEntry entry = entries.nextElement();
                if (!entry.isDirectory() && LEGAL.matcher(entry.getName()).matches()) {
                    texts.add(plain(new String(opened.getInputStream(entry).readAllBytes(), UTF_8)));
                }
            }
        }
        return texts;
    }
}
