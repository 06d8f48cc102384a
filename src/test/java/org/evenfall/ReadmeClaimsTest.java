package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.junit.ArchTest;
import java.io.IOException;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Member;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;

/**
 * Every sentence and table cell of README.md is in a line of readme-claims.csv, which names what tries it: a test, a script
 * that the build runs, or {@code none} with the reason.
 */
class ReadmeClaimsTest {

    private static final Path TESTS = Path.of("src", "test", "java");
    private static final String NONE = "none: ";
    /** Left out of every build. */
    private static final Set<String> NOT_RUN = Set.of("proof", "tour", "bench");

    /**
     * A line.
     *
     * @param claim part of the README
     * @param triedBy tests and scripts, or the reason why there is none
     */
    private record Claim(String claim, String triedBy) {

        Stream<String> names() {
            return triedBy.startsWith(NONE) ? Stream.of() : Stream.of(triedBy.split("; "));
        }
    }

    private static ReadmeText readme() throws IOException {
        return ReadmeText.of(Files.readString(Path.of("README.md")), List.of("Licence", "Published sources"));
    }

    private static List<Claim> claims() throws IOException {
        Path file = Path.of("src", "test", "resources", "org", "evenfall", "readme-claims.csv");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser lines = CSVParser.parse(Files.readString(file), format)) {
            return lines.stream()
                    .map(line -> new Claim(line.get("claim"), line.get("tried by")))
                    .toList();
        }
    }

    @Test
    void everyClaimIsInTheReadmeOnce() throws IOException {
        String text = readme().text();
        assertThat(claims().stream()
                        .map(Claim::claim)
                        .filter(claim -> !text.contains(claim) || text.indexOf(claim) != text.lastIndexOf(claim))
                        .toList())
                .as("claims that are not in README.md, or more than once")
                .isEmpty();
    }

    @Test
    void everySentenceIsCovered() throws IOException {
        ReadmeText readme = readme();
        BitSet covered = new BitSet();
        for (Claim claim : claims()) {
            int start = readme.text().indexOf(claim.claim());
            covered.set(Math.max(0, start), Math.max(0, start + claim.claim().length()));
        }
        List<String> open = new ArrayList<>();
        for (ReadmeText.Part part : readme.parts()) {
            for (int at = covered.nextClearBit(part.start()); at < part.end(); at = covered.nextClearBit(at + 1)) {
                if (Character.isLetterOrDigit(readme.text().charAt(at))) {
                    open.add(readme.of(part) + "  from: " + readme.text().substring(at, part.end()));
                    break;
                }
            }
        }
        assertThat(open).as("sentences without a line in readme-claims.csv").isEmpty();
    }

    @Test
    void everyTestAndScriptIsThereAndRun() throws IOException {
        Set<String> scripts = calledScripts();
        List<String> wrong = new ArrayList<>();
        for (Claim claim : claims()) {
            if (claim.triedBy().startsWith(NONE)) {
                continue;
            }
            for (String name : claim.names().toList()) {
                if (!(name.contains("#") ? isTest(name) : scripts.contains(name))) {
                    wrong.add(name + "  tries: " + claim.claim());
                }
            }
        }
        assertThat(wrong).as("no test and no script that is run").isEmpty();
        assertThat(claims())
                .extracting(Claim::triedBy)
                .allMatch(by -> !by.isBlank() && !by.strip().equals("none:"));
    }

    /** The scripts that {@code .ci/run} calls, directly or by another one. */
    private static Set<String> calledScripts() throws IOException {
        Set<String> called = new TreeSet<>();
        List<String> open = new ArrayList<>(List.of(".ci/run"));
        while (!open.isEmpty()) {
            String lines = Files.readString(Path.of(open.remove(0)))
                    .lines()
                    .filter(line -> !line.strip().startsWith("#"))
                    .reduce("", (all, line) -> all + line + "\n");
            for (Path folder : List.of(Path.of(".ci"), Path.of("packaging"))) {
                try (Stream<Path> files = Files.list(folder)) {
                    for (Path file : files.filter(Files::isRegularFile).toList()) {
                        String name = file.toString().replace('\\', '/');
                        if (lines.matches("(?s).*(^|[\\s(])" + name.replace(".", "\\.") + "(\\s.*)?")
                                && called.add(name)) {
                            open.add(name);
                        }
                    }
                }
            }
        }
        return called;
    }

    private static boolean isTest(String name) throws IOException {
        String[] parts = name.split("#", 2);
        try {
            Class<?> type = Class.forName(parts[0].contains(".") ? parts[0] : qualified(parts[0]), false, loader());
            return runs(type)
                    && Stream.concat(Stream.of(type.getDeclaredMethods()), Stream.of(type.getDeclaredFields()))
                            .anyMatch(member -> ((Member) member).getName().equals(parts[1])
                                    && runs(member)
                                    && isAnnotated(member));
        } catch (ClassNotFoundException missing) {
            return false;
        }
    }

    private static ClassLoader loader() {
        return ReadmeClaimsTest.class.getClassLoader();
    }

    /** A class by its simple name; the empty text when there is none or more than one. */
    private static String qualified(String simple) throws IOException {
        try (Stream<Path> files = Files.walk(TESTS)) {
            List<Path> found =
                    files.filter(file -> file.endsWith(simple + ".java")).toList();
            return found.size() != 1
                    ? ""
                    : TESTS.relativize(found.get(0))
                            .toString()
                            .replace(".java", "")
                            .replace('\\', '.')
                            .replace('/', '.');
        }
    }

    private static boolean runs(AnnotatedElement element) {
        return Stream.of(element.getAnnotationsByType(Tag.class)).noneMatch(tag -> NOT_RUN.contains(tag.value()));
    }

    private static boolean isAnnotated(AnnotatedElement member) {
        return Stream.of(Test.class, ParameterizedTest.class, TestFactory.class, RepeatedTest.class, ArchTest.class)
                .anyMatch(member::isAnnotationPresent);
    }
}
